package goniograph.check.rules;

import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.dose.Unit;
import goniograph.library.Precaution.Within;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The two ends of what a table allows.
 *
 * @param low the least value inside
 * @param high the greatest value inside
 */
record Bounds(Optional<End> low, Optional<End> high) {

  /** An end in base units, as it is written, and in which unit. */
  record End(BigDecimal number, String spelling, Optional<Unit> unit) {
    private static End of(Quantity amount) {
      return new End(amount.inBase(), amount.toString(), Optional.of(amount.unit()));
    }

    private static End of(Integer count) {
      return new End(BigDecimal.valueOf(count), count.toString(), Optional.empty());
    }
  }

  /** An end that a value lies beyond, and whether it is the lower one. */
  record Passed(boolean below, End end) {
    /** {@code at most `60 s`}. */
    String words() {
      return (below ? "at least `" : "at most `") + end.spelling() + "`";
    }

    Optional<Unit> unit() {
      return end.unit();
    }

    /** How far the end is: of two ends on one side the nearer to all others. */
    BigDecimal tightness() {
      return below ? end.number() : end.number().negate();
    }
  }

  /** The ends of a range; of a word none. */
  static Bounds of(Within within) {
    if (within instanceof Within.Amounts amounts) {
      Range<Quantity> range = amounts.range();
      return new Bounds(range.low().map(End::of), range.high().map(End::of));
    }
    if (within instanceof Within.Counts counts) {
      return new Bounds(counts.range().low().map(End::of), counts.range().high().map(End::of));
    }
    return new Bounds(Optional.empty(), Optional.empty());
  }

  /** The end that a value lies beyond; nothing inside and at the ends. */
  Optional<Passed> passed(BigDecimal value) {
    return low.filter(end -> value.compareTo(end.number()) < 0)
        .map(end -> new Passed(true, end))
        .or(
            () ->
                high.filter(end -> value.compareTo(end.number()) > 0)
                    .map(end -> new Passed(false, end)));
  }
}
