package goniograph.check;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.Entry;
import goniograph.register.AcceptedFinding;
import goniograph.register.RegisterReader;
import goniograph.register.Role;
import goniograph.source.Span;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Lets warnings stand that someone accepted, and says which acceptances do not hold: run out, about
 * nothing any more, or of something that this role may not accept. An error is never accepted.
 *
 * @param who who may let the findings of a rule stand, by its name
 * @param today the day that counts as today
 */
record Acceptances(Map<String, Acceptance> who, LocalDate today) {

  /** The role that may accept; empty where nobody may. */
  static Optional<Role> role(Acceptance acceptance) {
    return switch (acceptance) {
      case NOBODY, SIGNED_TABLE -> Optional.empty();
      case CLINICIAN -> Optional.of(Role.CLINICAL);
      case AUTHOR -> Optional.of(Role.AUTHOR);
      case LANGUAGE_REVIEWER -> Optional.of(Role.LANGUAGE);
    };
  }

  /** The findings, those marked that stand, and what is wrong with acceptances. */
  List<Finding> applied(List<Finding> findings, List<Entry> entries) {
    List<Finding> all = new ArrayList<>();
    Map<String, List<AcceptedFinding>> accepted = new TreeMap<>();
    for (Entry entry : entries) {
      List<AcceptedFinding> here = RegisterReader.entry(entry).value().accepted();
      accepted.put(entry.id(), here);
      all.addAll(faults(entry, here, findings));
    }
    for (Finding finding : findings) {
      boolean stands =
          accepted.getOrDefault(finding.entry(), List.of()).stream()
              .anyMatch(one -> one.about(finding) && inForce(one) && allowed(one, finding));
      all.add(stands ? finding.asAccepted() : finding);
    }
    return all;
  }

  private boolean inForce(AcceptedFinding one) {
    return !today.isAfter(one.until());
  }

  /** Whether this role may let a finding stand. */
  boolean allowed(AcceptedFinding one, Finding finding) {
    return finding.level() != Level.ERROR && mayAccept(one.role(), one.rule());
  }

  private boolean mayAccept(Role role, String rule) {
    return Optional.ofNullable(who.get(rule)).flatMap(Acceptances::role).equals(Optional.of(role));
  }

  private List<Finding> faults(
      Entry entry, List<AcceptedFinding> accepted, List<Finding> findings) {
    Span at = Span.of(RegisterReader.file(entry.common().folder()));
    return Stream.of(
            fault(
                "acceptance-expired",
                Finding::warning,
                accepted.stream().filter(one -> !inForce(one)),
                "The time of an acceptance is over",
                "What was to be looked at again has not been.",
                "Mend what the warning says, or accept it anew with `register accept`.",
                at),
            fault(
                "acceptance-unused",
                Finding::warning,
                accepted.stream().filter(this::inForce).filter(one -> none(one, entry, findings)),
                "An acceptance is about nothing that is found any more",
                "It would hide the next warning of the kind if it happened to read the same.",
                "Take it out of the file.",
                at),
            fault(
                "acceptance-refused",
                Finding::error,
                accepted.stream().filter(one -> refused(one, entry, findings)),
                "An acceptance is of something that this role, or any file, cannot accept",
                "A safety error goes away only by mending it, or by changing the signed table.",
                "Take it out of the file; `explain RULE` says who may accept what.",
                at))
        .flatMap(Optional::stream)
        .map(finding -> finding.withEntry(entry.id()))
        .toList();
  }

  private static boolean none(AcceptedFinding one, Entry entry, List<Finding> findings) {
    return about(one, entry, findings).findAny().isEmpty();
  }

  private boolean refused(AcceptedFinding one, Entry entry, List<Finding> findings) {
    return about(one, entry, findings).anyMatch(finding -> !allowed(one, finding));
  }

  private static Stream<Finding> about(AcceptedFinding one, Entry entry, List<Finding> findings) {
    return findings.stream()
        .filter(finding -> finding.entry().equals(entry.id()) && one.about(finding));
  }

  /** A finding of one level. */
  private interface Kind {
    Finding of(String rule, Span at, String what, String why, String mend);
  }

  private static Optional<Finding> fault(
      String rule,
      Kind kind,
      Stream<AcceptedFinding> which,
      String what,
      String why,
      String mend,
      Span at) {
    String names =
        which
            .map(one -> "`" + one.rule() + "` by " + one.by() + " until " + one.until())
            .distinct()
            .collect(Collectors.joining(", "));
    if (names.isEmpty()) {
      return Optional.empty();
    }
    String words = what + ": " + names + ".";
    return Optional.of(kind.of(rule, at, words, why, mend));
  }
}
