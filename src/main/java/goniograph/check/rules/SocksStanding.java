package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.Property;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Feet;
import goniograph.matter.Located;
import java.util.stream.Stream;

/** Standing in socks. */
public final class SocksStanding implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "socks-standing",
          "`feet: socks` in an exercise that stands at any moment.",
          "Socks slip on a smooth floor.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          Example.in(ExampleFiles.HEEL_TO_TOE, "feet: shoes", "feet: «socks»"),
          Example.in(ExampleFiles.CHAIR_RISE, "feet: shoes", "feet: «socks»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    return rung.conditions().feet().stream()
        .filter(feet -> feet.value() == Feet.SOCKS)
        .filter(feet -> Property.stands(exercise, rung))
        .map(Located::at)
        .map(
            at ->
                warning(
                    at,
                    "The patient stands in socks.",
                    "Write `feet: shoes`, or `feet: bare` with `s-skin-feet`."));
  }
}
