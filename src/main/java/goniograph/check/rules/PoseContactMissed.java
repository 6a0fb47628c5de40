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
import goniograph.pose.Solved;
import goniograph.source.Span;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** A hand or foot that does not reach what the pose says it touches. */
public final class PoseContactMissed implements PoseRule {
  private static final double MOST_CM = 0.5;

  private static final RulePage PAGE =
      RulePage.of(
          "pose-contact-missed",
          "At some moment of the movement a part is more than 0.5 cm away from what its contact says"
              + " it touches.",
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
    Map<Span, ContactMiss> worst = new LinkedHashMap<>();
    solved.facts().all().stream()
        .map(MomentFacts::misses)
        .flatMap(misses -> misses.stream())
        .filter(miss -> miss.cm() > MOST_CM)
        .forEach(miss -> worst.merge(miss.contact().at(), miss, PoseContactMissed::worse));
    return worst.values().stream().map(this::finding);
  }

  private static ContactMiss worse(ContactMiss a, ContactMiss b) {
    return a.cm() >= b.cm() ? a : b;
  }

  private Finding finding(ContactMiss miss) {
    return error(
        miss.contact().at(),
        String.format(Locale.ROOT, "`%s` is missed by %.1f cm.", miss.contact().words(), miss.cm()),
        "Bring the support nearer, or change the angles so that the limb reaches it.");
  }
}
