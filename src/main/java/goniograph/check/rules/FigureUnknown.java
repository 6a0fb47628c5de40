package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import java.util.Set;
import java.util.stream.Stream;

/** A pose file that is named and not there. */
public final class FigureUnknown implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "figure-unknown",
          "`figure` names a pose file that is not in `figures/`; the nearest is offered.",
          "Patients go by the drawing; without it the sheet is not made.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.CHAIR_RISE, "figure: hp-chair-rise", "figure: «hp-chair-rose»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    Set<String> known = checked.library().figures().keySet();
    return rung.conditions().figure().stream()
        .filter(figure -> !known.contains(figure.value()))
        .map(
            figure ->
                error(
                    figure.at(),
                    References.what("pose file", figure.value(), known),
                    References.mend(
                        figure.value(), known, "add `figures/" + figure.value() + ".yaml`")));
  }
}
