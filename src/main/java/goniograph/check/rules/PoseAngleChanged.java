package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.PoseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.pose.PoseFile;
import goniograph.pose.Solved;
import goniograph.pose.TypedDifference;
import java.util.stream.Stream;

/** A typed angle that the contacts made into another. */
public final class PoseAngleChanged implements PoseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "pose-angle-changed",
          "A typed angle is more than 5 deg off the solved one (a warning), or more than 15 deg (an"
              + " error), and the limb has no contact of its own that explains it.",
          "The author believes one angle, and the sheet shows another.",
          RulePage.PRACTICE,
          Acceptance.AUTHOR,
          Example.in("figures/sh-row-band.yaml", "hip both: flexion 85,", "hip both: «flexion 60»,")
              .alongside("figures/sh-row-band.yaml", "feet on floor, ", ""));

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
    return solved.facts().differences().stream()
        .filter(difference -> !difference.explained())
        .map(this::finding);
  }

  private Finding finding(TypedDifference difference) {
    String what =
        "`"
            + difference.freedom().jointWords()
            + "` is typed as "
            + Angles.words(difference.freedom(), difference.typed())
            + " and comes out as "
            + Angles.words(difference.freedom(), difference.solved())
            + ".";
    String mend = "Type the solved angle, or change the contact that moves the joint.";
    Finding finding =
        difference.size() > TypedDifference.GRAVE
            ? error(difference.at(), what, mend)
            : warning(difference.at(), what, mend);
    return finding.withBecause("frame " + difference.frame());
  }
}
