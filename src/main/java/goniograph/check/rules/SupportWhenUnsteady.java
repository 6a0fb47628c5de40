package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.RulePage;
import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.library.Bound;
import goniograph.library.Exercise;
import goniograph.library.Requirement;
import goniograph.library.Rung;
import goniograph.library.Support;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.matter.Located;
import goniograph.pose.SceneFacts;
import goniograph.source.Span;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

/** Who stands unsteadily needs something fixed within reach. */
public final class SupportWhenUnsteady extends RequiredByTable {
  private static final String REACH = "reach";
  private static final String SUPPORT = "support";

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

  SupportWhenUnsteady() {
    super(PAGE);
  }

  @Override
  Stream<Gap> more(Exercise exercise, Rung rung, Requirement row, Checked checked) {
    Support support = rung.conditions().support();
    if (support.object().isEmpty()) {
      return Stream.of(
          new Gap(
              field(exercise, SUPPORT),
              "No support is named.",
              "Add `support: { object: kitchen-counter, reach: ..15 cm, … }`."));
    }
    Span at = support.object().map(Located::at).orElse(rung.at());
    Span figure = rung.conditions().figure().map(Located::at).orElse(rung.at());
    return Stream.of(
            need(rung),
            reach(support, at, row),
            checked.poses().facts(rung).flatMap(facts -> drawn(facts, figure, row)))
        .flatMap(Optional::stream);
  }

  /** Whoever stands unsteadily must know what the hand does at the support. */
  private static Optional<Gap> need(Rung rung) {
    Support support = rung.conditions().support();
    boolean said = support.need().filter(n -> n.value() != SupportNeed.NONE_NEEDED).isPresent();
    return said
        ? Optional.empty()
        : Optional.of(
            new Gap(
                Optional.of(support.need().map(Located::at).orElse(rung.at())),
                "Step " + rung.n() + " does not say what the hand does at the support.",
                "Write `support.need: fingertip`, or `hover`, `one-hand` or `two-hand`."));
  }

  /** What the figure shows: something to hold within reach of trunk and legs. */
  private static Optional<Gap> drawn(SceneFacts facts, Span figure, Requirement row) {
    Optional<BigDecimal> most = most(row);
    Optional<Double> nearest = facts.supportDistanceCm().values().stream().min(Double::compare);
    return most.filter(
            limit -> nearest.filter(cm -> Math.round(cm) <= limit.doubleValue()).isEmpty())
        .map(
            limit ->
                new Gap(
                    Optional.of(figure),
                    nearest
                        .map(cm -> "The figure shows its support " + Math.round(cm) + " cm away.")
                        .orElse("The figure shows nothing to hold."),
                    "Give the pose a support within " + limit.toPlainString() + " cm."));
  }

  private static Optional<BigDecimal> most(Requirement row) {
    return Optional.ofNullable(row.trigger().numbers().get(REACH)).map(Bound::inBase);
  }

  private static Optional<Gap> reach(Support support, Span at, Requirement row) {
    Optional<BigDecimal> most = most(row);
    Optional<Quantity> given = support.reach().map(Located::value).flatMap(Range::high);
    return most.filter(
            limit -> given.filter(reach -> reach.inBase().compareTo(limit) <= 0).isEmpty())
        .map(
            limit ->
                new Gap(
                    Optional.of(support.reach().map(Located::at).orElse(at)),
                    "The support may stand "
                        + given.map(Quantity::toString).orElse("anywhere")
                        + ", not within "
                        + limit.toPlainString()
                        + " cm.",
                    "Write `reach: .." + limit.toPlainString() + " cm` in `support`."));
  }
}
