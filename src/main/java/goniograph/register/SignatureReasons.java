package goniograph.register;

import goniograph.finding.Finding;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

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
    Map<Role, Integer> unsigned = new EnumMap<>(Role.class);
    for (Role role : duty.roles()) {
      int lacking = duty.signers(role) - Signatures.people(signatures.valid(role, text));
      List<Signature> outgrown =
          signatures.in(role).stream().filter(one -> !one.covers(text)).toList();
      if (lacking > 0 && outgrown.isEmpty()) {
        unsigned.put(role, lacking);
      } else if (lacking > 0) {
        reasons.add(outgrown(outgrown, role, text));
      }
    }
    if (!unsigned.isEmpty()) {
      reasons.add(new Reason(State.UNSIGNED, Print.DRAFT, unsigned(unsigned)));
    }
    return reasons;
  }

  private Reason outgrown(List<Signature> outgrown, Role role, Text text) {
    boolean edited = outgrown.stream().anyMatch(one -> !one.digest().equals(text.digest()));
    return edited
        ? new Reason(State.VOID, Print.NONE, voided(outgrown, role))
        : new Reason(State.STALE, outdated, stale(role));
  }

  private Finding unsigned(Map<Role, Integer> lacking) {
    String signers =
        lacking.entrySet().stream()
            .map(one -> signers(one.getValue()) + " in the role " + one.getKey().word())
            .collect(Collectors.joining(" and "));
    return Finding.note(
        "signature-missing",
        Span.of(file),
        capital(what) + " lacks " + signers + ".",
        WHY,
        sign(lacking.keySet()));
  }

  private static String signers(int number) {
    return number == 1 ? "a signature" : number + " signatures";
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
    return sign(Set.of(role));
  }

  private String sign(Set<Role> roles) {
    String words = roles.stream().map(Role::word).collect(Collectors.joining("`, `--role "));
    return "Read it, then sign: `register sign "
        + command
        + " --as ROLE-ID --role "
        + words
        + (roles.size() == 1 ? "`." : "`, each by another person.");
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
