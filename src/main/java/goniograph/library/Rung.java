package goniograph.library;

import goniograph.dose.Quantity;
import goniograph.dose.StepLoad;
import goniograph.source.Span;
import java.math.BigDecimal;
import java.util.List;

/**
 * An exercise as it is done on one step: the entry's dose, conditions and ranges with the step's
 * laid over them. An exercise without a ladder has one rung, number 1.
 *
 * @param n number of the step
 * @param dose the whole dose
 * @param conditions all conditions
 * @param range all limits of joints
 * @param at where the step stands, or the entry's front matter
 */
public record Rung(
    int n, LocatedDose dose, Conditions conditions, List<RangeLimit> range, Span at) {
  public Rung {
    range = List.copyOf(range);
  }

  /** All that makes this step easy or hard. */
  public StepLoad load() {
    return new StepLoad(
        dose.dose(), conditions.balance(), range.stream().map(Rung::width).reduce(BigDecimal::add));
  }

  /** Degrees from end to end; an end left out is 0. */
  private static BigDecimal width(RangeLimit limit) {
    var degrees = limit.degrees().value();
    BigDecimal low = degrees.low().map(Quantity::inBase).orElse(BigDecimal.ZERO);
    return degrees.high().map(Quantity::inBase).orElse(BigDecimal.ZERO).subtract(low);
  }
}
