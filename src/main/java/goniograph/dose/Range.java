package goniograph.dose;

import java.util.Optional;

/**
 * From a low end to a high end, both inside; an end left out is open. At least one end is given.
 *
 * @param low the least value inside
 * @param high the greatest value inside
 */
public record Range<T extends Comparable<T>>(Optional<T> low, Optional<T> high) {

  /** A range with both ends. */
  public static <T extends Comparable<T>> Range<T> of(T low, T high) {
    return new Range<>(Optional.of(low), Optional.of(high));
  }

  /** Everything up to this. */
  public static <T extends Comparable<T>> Range<T> upTo(T high) {
    return new Range<>(Optional.empty(), Optional.of(high));
  }

  /** Everything from this on. */
  public static <T extends Comparable<T>> Range<T> from(T low) {
    return new Range<>(Optional.of(low), Optional.empty());
  }

  /** Whether the value is inside; at an end is inside. */
  public boolean contains(T value) {
    return low.filter(end -> value.compareTo(end) < 0).isEmpty()
        && high.filter(end -> value.compareTo(end) > 0).isEmpty();
  }

  /** Whether the ends stand in the wrong order. */
  public boolean reversed() {
    return low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) > 0;
  }

  /** The spelling: {@code 5..10 s}, {@code ..3}, {@code 2..}; one value where both ends are one. */
  @Override
  public String toString() {
    if (low.isPresent() && low.equals(high)) {
      return low.get().toString();
    }
    String unit = low.or(() -> high).map(Range::unit).orElse("");
    return low.map(Range::number).orElse("") + ".." + high.map(Range::number).orElse("") + unit;
  }

  private static String number(Object end) {
    return end instanceof Quantity quantity ? quantity.value().toPlainString() : end.toString();
  }

  private static String unit(Object end) {
    return end instanceof Quantity quantity ? " " + quantity.unit().code() : "";
  }
}
