package goniograph.dose;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/**
 * A unit of measure by its code in UCUM, the Unified Code for Units of Measure. A UCUM month is the
 * mean Julian month of 30.4375 days.
 */
public enum Unit {
  SECOND("s", Dimension.TIME, "1"),
  MINUTE("min", Dimension.TIME, "60"),
  HOUR("h", Dimension.TIME, "3600"),
  DAY("d", Dimension.TIME, "86400"),
  WEEK("wk", Dimension.TIME, "604800"),
  MONTH("mo", Dimension.TIME, "2629800"),
  KILOGRAM("kg", Dimension.MASS, "1"),
  GRAM("g", Dimension.MASS, "0.001"),
  NEWTON("N", Dimension.FORCE, "1"),
  CENTIMETRE("cm", Dimension.LENGTH, "1"),
  METRE("m", Dimension.LENGTH, "100"),
  DEGREE("deg", Dimension.ANGLE, "1"),
  PERCENT("%", Dimension.SHARE, "1");

  /** What a unit measures; the base units are s, kg, N, cm, deg and %. */
  public enum Dimension {
    TIME,
    MASS,
    FORCE,
    LENGTH,
    ANGLE,
    SHARE
  }

  private final String code;
  private final Dimension dimension;
  private final BigDecimal inBase;

  Unit(String code, Dimension dimension, String inBase) {
    this.code = code;
    this.dimension = dimension;
    this.inBase = new BigDecimal(inBase);
  }

  /** The UCUM code, as written in front matter. */
  public String code() {
    return code;
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** How many base units of its dimension one of it is; exact. */
  public BigDecimal inBase() {
    return inBase;
  }

  /** The unit with exactly this code; case counts. */
  public static Optional<Unit> ofCode(String code) {
    return Arrays.stream(values()).filter(unit -> unit.code.equals(code)).findFirst();
  }
}
