package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.PoseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.pose.MomentFacts;
import goniograph.pose.PoseFile;
import goniograph.pose.SceneFacts;
import goniograph.pose.Solved;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Stream;

/** A part of the body below the floor. */
public final class PoseBelowFloor implements PoseRule {
  private static final double MOST_CM = 1;

  private static final RulePage PAGE =
      RulePage.of(
          "pose-below-floor",
          "At some moment of the movement a part of the body is more than 1 cm below the floor.",
          "Nobody can do what the drawing shows.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in("figures/sh-row-band.yaml", "pose: sh-row-band", "pose: «sh-row-band»")
              .where(
                  ExampleFiles.BAND,
                  "{ tag: blood-pressure-not-controlled, action: adapt, limits: { effort: ..4 } }",
                  "{ tag: blood-pressure-not-controlled, action: leave-out }")
              .where(
                  ExampleFiles.BAND,
                  "statements: [s-band-check,",
                  "statements: [s-rise-wait, s-dizzy-stop, s-band-check,")
              .alongside(
                  "figures/sh-row-band.yaml", "pelvis: tilt forward 0", "pelvis: tilt back 105")
              .alongside("figures/sh-row-band.yaml", "hip both: flexion 85", "hip both: flexion 0")
              .alongside("figures/sh-row-band.yaml", "chair: {height: 45}", "chair: {height: 5}"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, PoseFile pose, Solved solved) {
    return alone(pose, solved);
  }

  @Override
  public Stream<Finding> alone(PoseFile pose, Solved solved) {
    return check(pose, solved.facts());
  }

  /** One finding, for the part that lies deepest at any moment. */
  public Stream<Finding> check(PoseFile pose, SceneFacts facts) {
    return facts.all().stream()
        .max(Comparator.comparingDouble(MomentFacts::belowFloorCm))
        .filter(moment -> moment.belowFloorCm() > MOST_CM)
        .map(
            moment ->
                error(
                    pose.at(),
                    String.format(
                        Locale.ROOT,
                        "The %s is %.1f cm below the floor%s.",
                        moment.deepest(),
                        moment.belowFloorCm(),
                        facts.when(moment).isEmpty() ? "" : " " + facts.when(moment)),
                    "Add a contact such as `feet on floor`, or `toes on floor` where the heels are raised; or"
                        + " change the angles."))
        .stream();
  }
}
