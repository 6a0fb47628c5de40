package goniograph.check;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.register.Role;
import goniograph.source.Span;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Runs rules. The same library, poses and day give the same findings in the same order.
 *
 * @param rules the rules to run
 */
public record Checker(List<Rule> rules) {
  public Checker {
    rules = List.copyOf(rules);
  }

  private record Place(String rule, Span at, String language) {}

  /** All findings in report order: those of reading first made, then those of the rules. */
  public List<Finding> check(Checked checked) {
    Map<Place, Finding> first = new LinkedHashMap<>();
    Stream.concat(checked.findings().stream(), rules.stream().flatMap(rule -> rule.check(checked)))
        .forEach(
            finding ->
                first.putIfAbsent(
                    new Place(finding.rule(), finding.at(), finding.language()), finding));
    return new Acceptances(who(), checked.today())
        .applied(List.copyOf(first.values()), checked.entries().toList()).stream()
            .sorted(Finding.ORDER)
            .toList();
  }

  private Map<String, Acceptance> who() {
    Map<String, Acceptance> who = new LinkedHashMap<>();
    rules.forEach(rule -> who.put(rule.page().name(), rule.page().acceptance()));
    return who;
  }

  /** The role that may let a finding of a rule stand; empty where nobody may. */
  public Optional<Role> mayAccept(Finding finding) {
    return finding.level() == Level.ERROR
        ? Optional.empty()
        : Optional.ofNullable(who().get(finding.rule())).flatMap(Acceptances::role);
  }

  /** The findings about these entries and about what all entries share. */
  public static List<Finding> about(Collection<String> entries, List<Finding> findings) {
    return findings.stream()
        .filter(finding -> finding.entry().isEmpty() || entries.contains(finding.entry()))
        .toList();
  }
}
