package goniograph.dose;

import java.util.List;

/** What a field measures: the units it takes, the usual one first, and an example. */
public enum Measure {
  SECONDS("10 s", Unit.SECOND, Unit.MINUTE),
  HOURS("6 h", Unit.HOUR, Unit.MINUTE),
  DAYS("7 d", Unit.DAY, Unit.WEEK),
  WEEKS("8 wk", Unit.WEEK, Unit.MONTH, Unit.DAY),
  MASS("2.5 kg", Unit.KILOGRAM, Unit.GRAM),
  FORCE("40 N", Unit.NEWTON),
  LENGTH("45 cm", Unit.CENTIMETRE, Unit.METRE),
  ANGLE("45 deg", Unit.DEGREE),
  SHARE("50 %", Unit.PERCENT);

  private final String example;
  private final List<Unit> units;

  Measure(String example, Unit... units) {
    this.example = example;
    this.units = List.of(units);
  }

  /** A right spelling. */
  public String example() {
    return example;
  }

  /** The units it takes, the usual one first. */
  public List<Unit> units() {
    return units;
  }

  /** Whether a value below zero makes sense: only for angles. */
  public boolean signed() {
    return this == ANGLE;
  }

  /** The spelling of one quantity as a regular expression of ECMA-262 and Java. */
  public String pattern() {
    return Spelled.quantity(this);
  }

  /** The spelling of a quantity or a range, as a regular expression. */
  public String rangePattern() {
    return Spelled.quantities(this);
  }

  /** Reads one quantity, exactly as typed. */
  public Parsed<Quantity> read(String raw) {
    return new QuantityReader(this).one(raw);
  }

  /** Reads a range; a single quantity is the range of that one value. */
  public Parsed<Range<Quantity>> readRange(String raw) {
    return new QuantityReader(this).range(raw);
  }
}
