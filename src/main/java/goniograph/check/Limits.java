package goniograph.check;

import goniograph.library.Bound;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;

/**
 * The numbers of a row, that its properties are worked out with.
 *
 * @param numbers by name
 */
record Limits(Map<String, Bound> numbers) {

  /** A limit in its base unit; nothing where the row does not set it. */
  Optional<BigDecimal> get(String name) {
    return Optional.ofNullable(numbers.get(name)).map(Bound::inBase);
  }

  /** Whether a value reaches a limit; false where the row does not set it. */
  boolean reached(String name, BigDecimal value) {
    return get(name).filter(limit -> value.compareTo(limit) >= 0).isPresent();
  }

  /** Whether a measure of the pose reaches a limit, in whole degrees. */
  boolean reached(String name, double degrees) {
    return reached(name, BigDecimal.valueOf(Math.round(degrees)));
  }

  /** Whether a measure of the pose is over a limit, in whole degrees. */
  boolean passed(String name, double degrees) {
    return get(name)
        .filter(limit -> BigDecimal.valueOf(Math.round(degrees)).compareTo(limit) > 0)
        .isPresent();
  }
}
