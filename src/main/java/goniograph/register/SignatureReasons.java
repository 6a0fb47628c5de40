package goniograph.register;

import goniograph.finding.Finding;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Why the signatures under one text are not enough.
 *
 * @param duty who must sign
 * @param what the text in words, for instance "the wording of `s-calf` in ar"
 * @param command what signs it, without {@code --as} and {@code --role}
 * @param file path of the text
 * @param outdated how a sheet may be printed while this text lags behind its source
 */
record SignatureReasons(Duty duty, String what, String command, String file, Print outdated) {
  private static final String WHY =
      "Only a text that the right people stand by reaches a patient as final.";

  /** The reasons for a text as it stands; none where it is validly signed. */
  List<Reason> of(Signatures signatures, Text text) {
    List<Reason> reasons = new ArrayList<>();
    signatures.conflicts().stream().findFirst().ifPresent(one -> reasons.add(conflict(one)));
    for (Role role : duty.roles()) {
      int lacking = duty.signers(role) - Signatures.people(signatures.valid(role, text));
      if (lacking > 0) {
        reasons.add(lacking(signatures.in(role), role, lacking, text));
      }
    }
    return reasons;
  }

  private Reason lacking(List<Signature> given, Role role, int lacking, Text text) {
    List<Signature> outgrown = given.stream().filter(one -> !one.covers(text)).toList();
    if (outgrown.isEmpty()) {
      return new Reason(State.UNSIGNED, Print.DRAFT, unsigned(role, lacking));
    }
    boolean edited = outgrown.stream().anyMatch(one -> !one.digest().equals(text.digest()));
    return edited
        ? new Reason(State.VOID, Print.NONE, voided(outgrown, role))
        : new Reason(State.STALE, outdated, stale(role));
  }

  private Finding unsigned(Role role, int lacking) {
    String signer = lacking == 1 ? "a signature" : lacking + " signatures";
    return Finding.note(
        "signature-missing",
        Span.of(file),
        capital(what) + " lacks " + signer + " in the role " + role.word() + ".",
        WHY,
        sign(role));
  }

  private Finding voided(List<Signature> outgrown, Role role) {
    Set<String> people = new LinkedHashSet<>();
    outgrown.forEach(one -> people.add(one.by() + " (" + one.on() + ")"));
    return Finding.error(
        "signature-void",
        Span.of(file),
        capital(what)
            + " has been edited since it was signed as "
            + role.word()
            + " by "
            + String.join(", ", people)
            + ".",
        "A signature stands for exactly the words and numbers that were read. " + WHY,
        sign(role));
  }

  private Finding stale(Role role) {
    return Finding.warning(
        "translation-stale",
        Span.of(file),
        capital(what) + " was made from a source text that has changed since.",
        "It may say something else than what the clinic now stands by.",
        "Compare it with the source text. " + sign(role));
  }

  private Reason conflict(Signature one) {
    return new Reason(
        State.VOID,
        Print.NONE,
        Finding.error(
            "signature-conflict",
            Span.of(file),
            capital(what) + " is signed by " + one.by() + " in two roles that exclude each other.",
            "Nobody sees their own mistakes: a second person must read it.",
            "Have someone else sign. " + sign(one.role())));
  }

  private String sign(Role role) {
    return "Read it, then sign: `register sign "
        + command
        + " --as ROLE-ID --role "
        + role.word()
        + "`.";
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
