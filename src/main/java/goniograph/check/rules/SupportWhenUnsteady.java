package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.RulePage;
import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.library.Exercise;
import goniograph.library.Requirement;
import goniograph.library.Rung;
import goniograph.library.Support;
import goniograph.matter.Located;
import goniograph.pose.SceneFacts;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

/** Who stands unsteadily needs something fixed within reach. */
public final class SupportWhenUnsteady extends RequiredByTable {
  private static final String REACH = "reach";

  private static final RulePage PAGE =
      RulePage.of(
          "support-when-unsteady",
          "On the feet with the feet close together, heel to toe, on one leg, a foot off the floor or"
              + " the heels raised: the entry names a fixed support within a hand's width, in its"
              + " fields and in its figure, carries `s-support`, `s-fall` and `s-fall-hurt`, and"
              + " says what to do for `falls-last-year`.",
          "A person who sways and finds nothing to hold falls.",
          "Robertson and Campbell 2003 (Otago exercise programme): a stable, fixed support",
          Acceptance.SIGNED_TABLE,
          ExampleFiles.without("s-support", ExampleFiles.HEEL_TO_TOE));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  Stream<Gap> more(Exercise exercise, Rung rung, Requirement row, Checked checked) {
    Support support = rung.conditions().support();
    if (support.object().isEmpty()) {
      return Stream.of(
          new Gap(
              "No support is named.",
              "Add `support: { object: kitchen-counter, reach: ..15 cm, … }`."));
    }
    return Stream.concat(
        reach(support, row).stream(),
        checked.poses().facts(rung).flatMap(facts -> drawn(facts, row)).stream());
  }

  /** What the figure shows: something to hold within reach of trunk and legs. */
  private static Optional<Gap> drawn(SceneFacts facts, Requirement row) {
    Optional<BigDecimal> most = most(row);
    Optional<Double> nearest = facts.supportDistanceCm().values().stream().min(Double::compare);
    return most.filter(
            limit -> nearest.filter(cm -> Math.round(cm) <= limit.doubleValue()).isEmpty())
        .map(
            limit ->
                new Gap(
                    nearest
                        .map(cm -> "The figure shows its support " + Math.round(cm) + " cm away.")
                        .orElse("The figure shows nothing to hold."),
                    "Give the pose a support within " + limit.toPlainString() + " cm."));
  }

  private static Optional<BigDecimal> most(Requirement row) {
    return Optional.ofNullable(row.numbers().get(REACH)).map(Requirement.Bound::inBase);
  }

  private static Optional<Gap> reach(Support support, Requirement row) {
    Optional<BigDecimal> most = most(row);
    Optional<Quantity> given = support.reach().map(Located::value).flatMap(Range::high);
    return most.filter(
            limit -> given.filter(reach -> reach.inBase().compareTo(limit) <= 0).isEmpty())
        .map(
            limit ->
                new Gap(
                    "The support may stand "
                        + given.map(Quantity::toString).orElse("anywhere")
                        + ", not within "
                        + limit.toPlainString()
                        + " cm.",
                    "Write `reach: .." + limit.toPlainString() + " cm` in `support`."));
  }
}
