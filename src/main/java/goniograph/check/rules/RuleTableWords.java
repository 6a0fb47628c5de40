package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Property;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Requirement;
import goniograph.matter.Located;
import java.util.List;
import java.util.stream.Stream;

/** A row of the rule table that asks for something the tool does not know. */
public final class RuleTableWords implements Rule {
  private static final RulePage PAGE =
      RulePage.of(
          "rule-table-word",
          "A row of `requires` names a rule or a property that is not known; the nearest is offered.",
          "The row would never fire, and nobody would notice that a caution is missing.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.REQUIRED, "when: held-effort", "when: «held-efort»"),
          Example.in(
              ExampleFiles.REQUIRED, "rule: chair-cannot-slide", "rule: «chair-can-not-slide»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Checked checked) {
    List<String> rules =
        RuleBook.rules().stream()
            .filter(RequiredByTable.class::isInstance)
            .map(rule -> rule.page().name())
            .toList();
    return checked.library().requirements().stream().flatMap(row -> row(row, rules));
  }

  private Stream<Finding> row(Requirement row, List<String> rules) {
    return Stream.concat(
        unknown("rule", row.rule(), rules), unknown("property", row.when(), Property.words()));
  }

  private Stream<Finding> unknown(String kind, Located<String> word, List<String> known) {
    return References.unknown(
        this, Stream.of(word), kind, known, "write one of " + String.join(", ", known));
  }
}
