package goniograph.library;

import goniograph.dose.Quantity;
import java.math.BigDecimal;

/** A number of a rule table: with its unit, or a plain count. */
public sealed interface Bound {
  /** With a unit. */
  record Amount(Quantity quantity) implements Bound {}

  /** Without. */
  record Count(int count) implements Bound {}

  /** The value in its base unit: s, kg, N, cm, deg or %. */
  default BigDecimal inBase() {
    return this instanceof Amount amount
        ? amount.quantity().inBase()
        : BigDecimal.valueOf(((Count) this).count());
  }
}
