package goniograph.dose;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * An exact decimal with its unit. The value never carries trailing zeros, so {@code 2.50 kg} equals
 * {@code 2.5 kg}; {@code 60 s} and {@code 1 min} compare as the same but are not equal, since they
 * are printed differently.
 *
 * @param value the number
 * @param unit its unit
 */
public record Quantity(BigDecimal value, Unit unit) implements Comparable<Quantity> {
  public Quantity {
    value = plain(value);
  }

  /** For code: {@code Quantity.of(10, Unit.SECOND)}. */
  public static Quantity of(long value, Unit unit) {
    return new Quantity(BigDecimal.valueOf(value), unit);
  }

  /** A decimal for code: {@code Quantity.of("2.5", Unit.KILOGRAM)}. */
  public static Quantity of(String decimal, Unit unit) {
    return new Quantity(new BigDecimal(decimal), unit);
  }

  /** The value in the base unit of its dimension: s, kg, N, cm, deg or %. */
  public BigDecimal inBase() {
    return plain(value.multiply(unit.inBase()));
  }

  /**
   * The same amount in another unit, or nothing if that is not exact or measures something else.
   */
  public Optional<Quantity> in(Unit other) {
    if (other.dimension() != unit.dimension()) {
      return Optional.empty();
    }
    try {
      BigDecimal exact = inBase().divide(other.inBase(), 3, RoundingMode.UNNECESSARY);
      return Optional.of(new Quantity(exact, other));
    } catch (ArithmeticException notExact) {
      return Optional.empty();
    }
  }

  /** By dimension, then by amount whatever the unit. */
  @Override
  public int compareTo(Quantity other) {
    int byDimension = unit.dimension().compareTo(other.unit.dimension());
    return byDimension != 0 ? byDimension : inBase().compareTo(other.inBase());
  }

  /** The one spelling: number, space, unit. */
  @Override
  public String toString() {
    return value.toPlainString() + " " + unit.code();
  }

  private static BigDecimal plain(BigDecimal value) {
    BigDecimal stripped = value.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
