package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.PoseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.matter.Spellings;
import goniograph.pose.PoseFile;
import goniograph.pose.Solved;
import java.util.stream.Stream;

/** An entry that says one position, and a figure that shows another. */
public final class PosePosition implements PoseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "pose-position",
          "The entry's `position` is not the `base` of its pose file.",
          "Rules judge the position, and patients do what they see.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.CHAIR_RISE, "position: sitting", "position: «leaning»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, PoseFile pose, Solved solved) {
    String position = Spellings.word(exercise.position().value());
    String base = pose.base().word();
    return position.equals(base)
        ? Stream.empty()
        : Stream.of(
            error(
                    exercise.position().at(),
                    "The position is `" + position + "`, the figure's is `" + base + "`.",
                    "Write `position: " + base + "`, or mend `base` in the pose file.")
                .withBecause(pose.at().file() + ": base " + base));
  }
}
