package goniograph.check.rules;

import goniograph.body.Side;
import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Stance;
import goniograph.pose.MomentFacts;
import goniograph.pose.SceneFacts;
import java.util.stream.Stream;

/** A stance on one leg, and a figure that stands on two, or the other way round. */
public final class StanceAndFigure implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "stance-and-figure",
          "`stance: one-leg` while the figure never stands on one foot, or another stance while it"
              + " stands on one foot all the time.",
          "Patients go by the drawing; a clinician went by the field.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.HEEL_TO_TOE, "stance: tandem", "stance: «one-leg»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    return rung.conditions().stance().stream()
        .flatMap(
            stance ->
                checked.poses().facts(rung).stream()
                    .filter(facts -> differ(stance.value(), facts))
                    .map(
                        facts ->
                            error(
                                stance.at(),
                                stance.value() == Stance.ONE_LEG
                                    ? "The figure stands on both feet all the time."
                                    : "The figure stands on one foot all the time.",
                                "Change the stance, or the pose.")));
  }

  private static boolean differ(Stance stance, SceneFacts facts) {
    return stance == Stance.ONE_LEG
        ? facts.all().stream().allMatch(m -> m.bears(Side.LEFT) && m.bears(Side.RIGHT))
        : facts.all().stream().allMatch(StanceAndFigure::onOneFoot);
  }

  private static boolean onOneFoot(MomentFacts moment) {
    return moment.bears(Side.LEFT) != moment.bears(Side.RIGHT);
  }
}
