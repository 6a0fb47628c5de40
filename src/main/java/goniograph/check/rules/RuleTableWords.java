package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Property;
import goniograph.check.Rule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.TagRule;
import goniograph.library.Trigger;
import goniograph.matter.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A row of the rule table that asks for something the tool does not know. */
public final class RuleTableWords implements Rule {
  private static final RulePage PAGE =
      RulePage.of(
          "rule-table-word",
          "A row of `requires` or `tags` names a rule or a property that is not known; the nearest is"
              + " offered.",
          "The row would never fire, and nobody would notice that a caution is missing.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.REQUIRED, "when: held-effort", "when: «held-efort»"),
          Example.in(
              ExampleFiles.REQUIRED, "rule: chair-cannot-slide", "rule: «chair-can-not-slide»"),
          Example.in(
              ExampleFiles.PRECAUTIONS,
              "tag: cannot-kneel, acts_on: knees-padded",
              "tag: cannot-kneel, acts_on: «knee-padded»"));

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
    Stream<Finding> required =
        checked.library().requirements().stream()
            .flatMap(
                row ->
                    Stream.concat(
                        unknown("rule", Stream.of(row.rule()), rules),
                        properties(row.trigger(), Property.words())));
    List<String> actedOn = new ArrayList<>(rules);
    actedOn.addAll(Property.words());
    actedOn.addAll(List.of(TagRule.PACK, TagRule.HELPER, "region-" + TagRule.EACH_REGION));
    Stream<Finding> tags =
        checked.library().tagRules().stream().flatMap(row -> properties(row.trigger(), actedOn));
    return Stream.concat(required, tags);
  }

  private Stream<Finding> properties(Trigger trigger, List<String> known) {
    return unknown(
        "property", Stream.concat(trigger.when().stream(), trigger.and().stream()), known);
  }

  private Stream<Finding> unknown(String kind, Stream<Located<String>> words, List<String> known) {
    return References.unknown(this, words, kind, known, "write one of " + String.join(", ", known));
  }
}
