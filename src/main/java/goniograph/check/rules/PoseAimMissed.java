package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.PoseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.pose.KeyFrame;
import goniograph.pose.Moment;
import goniograph.pose.PoseFile;
import goniograph.pose.SegmentWish;
import goniograph.pose.Solved;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A segment that shall lie level, upright or towards something, and does not. */
public final class PoseAimMissed implements PoseRule {
  private static final double MISSED = 5;

  private static final RulePage PAGE =
      RulePage.of(
          "pose-aim-missed",
          "A segment that is written as `level`, `upright` or `pointing at …` comes out more than"
              + " 5 deg off, mostly because a contact of the limb wants something else.",
          "The author believes one picture, and the sheet shows another.",
          RulePage.PRACTICE,
          Acceptance.AUTHOR,
          Example.in(
              "figures/sh-row-band.yaml",
              "knee both: flexion 95",
              "knee both: flexion 95, foot both: «pointing at right»"));

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
    return IntStream.range(0, pose.frames().size())
        .boxed()
        .flatMap(
            i -> {
              KeyFrame frame = pose.frames().get(i);
              Moment moment = solved.scene().keys().get(i);
              return pose.wishes(frame).stream()
                  .flatMap(wish -> missed(wish, moment, solved).stream());
            });
  }

  private Optional<Finding> missed(SegmentWish wish, Moment moment, Solved solved) {
    long off = Math.round(wish.offDegrees(moment.skeleton(), solved.scene().supports()));
    return off <= MISSED
        ? Optional.empty()
        : Optional.of(
            warning(
                    wish.at(),
                    "`" + wish.words() + "` comes out " + off + " deg off.",
                    "Free the limb from its contact, or take the word out: the contact decides.")
                .withBecause("frame " + moment.name()));
  }
}
