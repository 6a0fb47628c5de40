package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Ages;
import goniograph.check.Example;
import goniograph.check.PoseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.pose.PoseFile;
import goniograph.pose.RangeBreach;
import goniograph.pose.Solved;
import java.util.stream.Stream;

/** A joint that bends further than joints do. */
public final class PoseRangeOfMotion implements PoseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "pose-range-of-motion",
          "At some moment of the solved movement a joint is outside the norms of its age group (a"
              + " warning) or outside the hard limits (an error).",
          "Few patients, or none, can do what the drawing shows.",
          "Norkin and White, Measurement of Joint Motion, Table A.1; Soucie 2011; the hard limits are"
              + " common practice",
          Acceptance.CLINICIAN,
          Example.in(
                  "figures/ba-heel-toe-stand.yaml",
                  "pose: ba-heel-toe-stand",
                  "pose: «ba-heel-toe-stand»")
              .alongside(
                  "figures/ba-heel-toe-stand.yaml",
                  "elbow left: flexion 59",
                  "elbow left: flexion 59\n  elbow right: flexion 175"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, PoseFile pose, Solved solved) {
    return breaches(Ages.of(exercise), pose, solved);
  }

  @Override
  public Stream<Finding> alone(PoseFile pose, Solved solved) {
    return breaches(AgeGroup.ADULT, pose, solved);
  }

  private Stream<Finding> breaches(AgeGroup age, PoseFile pose, Solved solved) {
    return solved.facts().breaches(age).stream()
        .filter(PoseRangeOfMotion::byADegree)
        .map(breach -> finding(breach, pose));
  }

  /** Whole degrees count. */
  private static boolean byADegree(RangeBreach breach) {
    return Math.round(breach.value()) < Math.round(breach.range().low())
        || Math.round(breach.value()) > Math.round(breach.range().high());
  }

  private Finding finding(RangeBreach breach, PoseFile pose) {
    String what =
        "`"
            + breach.freedom().jointWords()
            + "` reaches "
            + Angles.words(breach.freedom(), breach.value())
            + ", "
            + (breach.hard() ? "the limit" : "the norm")
            + " is "
            + Angles.words(breach.freedom(), breach.range().low())
            + " to "
            + Angles.words(breach.freedom(), breach.range().high())
            + ".";
    String mend = "Change the typed angles, or the contact that bends the joint.";
    Finding finding = breach.hard() ? error(pose.at(), what, mend) : warning(pose.at(), what, mend);
    return finding.withBecause(frame(breach.frame())).withSource(breach.range().source());
  }

  private static String frame(String name) {
    return name.isEmpty() ? "between two key frames" : "frame " + name;
  }
}
