package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Example;
import goniograph.check.PoseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.pose.ContactMiss;
import goniograph.pose.MomentFacts;
import goniograph.pose.PoseFile;
import goniograph.pose.SceneFacts;
import goniograph.pose.Solved;
import goniograph.source.Span;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** A hand or foot that does not reach what the pose says it touches. */
public final class PoseContactMissed implements PoseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "pose-contact-missed",
          "At some moment of the movement a part is more than 0.5 cm away from what its contact says"
              + " it touches, or a planted foot more than 0.1 cm from where it was planted.",
          "The drawing would show a hand in the air where the patient must hold on.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
                  "figures/ba-heel-toe-stand.yaml",
                  "contacts: [feet on floor, left fingertips on counter]",
                  "contacts: [feet on floor, «left fingertips on counter»]")
              .alongside(
                  "figures/ba-heel-toe-stand.yaml",
                  "side: left, height: 90,",
                  "side: left, height: 15,"));

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
    return check(solved.facts());
  }

  /** One finding for each contact, for the moment at which it is kept worst. */
  public Stream<Finding> check(SceneFacts facts) {
    Map<Span, Missed> worst = new LinkedHashMap<>();
    for (MomentFacts moment : facts.all()) {
      moment.misses().stream()
          .filter(miss -> !miss.kept())
          .map(miss -> new Missed(miss, facts.when(moment)))
          .forEach(missed -> worst.merge(missed.miss.contact().at(), missed, Missed::worse));
    }
    return worst.values().stream().map(this::finding);
  }

  private record Missed(ContactMiss miss, String when) {
    Missed worse(Missed other) {
      return size() >= other.size() ? this : other;
    }

    double size() {
      return Math.max(miss.cm(), miss.slipCm());
    }
  }

  private Finding finding(Missed missed) {
    ContactMiss miss = missed.miss;
    boolean slips = miss.cm() <= ContactMiss.MOST_CM;
    return error(
        miss.contact().at(),
        String.format(
            Locale.ROOT,
            "`%s` %s by %.1f cm%s.",
            miss.contact().words(),
            slips ? "slides" : "is missed",
            missed.size(),
            missed.when.isEmpty() ? "" : " " + missed.when),
        slips
            ? "Write `slides on`, or change the angles so that the foot can stay."
            : "Bring the support nearer, or change the angles so that the limb reaches it.");
  }
}
