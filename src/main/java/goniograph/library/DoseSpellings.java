package goniograph.library;

import goniograph.dose.Counts;
import goniograph.dose.DoseValue;
import goniograph.dose.Fault;
import goniograph.dose.Measure;
import goniograph.dose.Parsed;
import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.dose.ValueType;
import goniograph.finding.MendGrade;
import goniograph.finding.Nearest;
import goniograph.matter.Shape;
import goniograph.matter.Spelling;
import java.util.List;
import java.util.function.Function;

/** The spellings of the dose room, as fields are read with them. */
final class DoseSpellings {
  private DoseSpellings() {}

  static Spelling<DoseValue> of(ValueType type) {
    return by(shape(type), type::read);
  }

  static Spelling<Quantity> amount(Measure measure) {
    return by(new Shape.Text(measure.pattern()), measure::read);
  }

  static Spelling<Range<Quantity>> amounts(Measure measure) {
    return by(new Shape.Text(measure.rangePattern()), measure::readRange);
  }

  static Spelling<Range<Integer>> counts(Counts counts) {
    return by(range(counts), counts::readRange);
  }

  private static Shape shape(ValueType type) {
    if (type instanceof ValueType.ACount count) {
      return new Shape.Whole(count.counts().least(), count.counts().most());
    } else if (type instanceof ValueType.AnAmount amount) {
      return new Shape.Text(amount.measure().pattern());
    } else if (type instanceof ValueType.OneOf words) {
      return new Shape.Words(words.words());
    } else if (type instanceof ValueType.Scores) {
      return range(Counts.SCORE);
    }
    return type instanceof ValueType.Flag
        ? new Shape.Truth()
        : new Shape.Text(ValueType.Id.SHAPE.pattern());
  }

  private static Shape range(Counts counts) {
    return new Shape.AnyOf(
        List.of(
            new Shape.Whole(counts.least(), counts.most()), new Shape.Text(Counts.RANGE_PATTERN)));
  }

  private static <T> Spelling<T> by(Shape shape, Function<String, Parsed<T>> reader) {
    return reading(reader).shaped(shape);
  }

  private static <T> Spelling<T> reading(Function<String, Parsed<T>> reader) {
    return (raw, refusal) -> {
      Parsed<T> parsed = reader.apply(raw);
      parsed
          .fault()
          .ifPresent(
              fault ->
                  refusal.because(
                      rule(fault),
                      what(fault, raw),
                      mend(fault),
                      grade(fault, raw),
                      better(fault, raw)));
      return parsed.value();
    };
  }

  private static String what(Fault fault, String raw) {
    String hint =
        fault.kind() == Fault.Kind.UNKNOWN_WORD ? Nearest.hint(raw, fault.spellings()) : "";
    return fault.what() + (hint.isEmpty() ? "." : hint);
  }

  private static String mend(Fault fault) {
    if (fault.spellings().isEmpty()) {
      return "Write one number in each field.";
    }
    String mend = fault.mend();
    return Character.toUpperCase(mend.charAt(0)) + mend.substring(1) + ".";
  }

  /**
   * Another spelling of the same value is safe. What may mean another value is asked for, and where
   * two values may be meant nobody chooses.
   */
  private static MendGrade grade(Fault fault, String raw) {
    if (better(fault, raw).isEmpty()) {
      return MendGrade.SHOW;
    }
    return switch (fault.kind()) {
      case SPACE, NUMBER_SPELLING, RANGE_SPELLING, FOREIGN_DIGITS, UNIT_UNKNOWN -> MendGrade.SAFE;
      case DECIMAL_COMMA, LEADING_ZERO, UNIT_UNWANTED, RANGE_REVERSED, UNKNOWN_WORD ->
          MendGrade.ASK;
      default -> MendGrade.SHOW;
    };
  }

  private static String better(Fault fault, String raw) {
    if (fault.kind() == Fault.Kind.UNKNOWN_WORD) {
      return Nearest.of(raw, fault.spellings()).orElse("");
    }
    return fault.spellings().size() == 1 ? fault.spellings().get(0) : "";
  }

  private static String rule(Fault fault) {
    return switch (fault.kind()) {
      case UNIT_MISSING -> "quantity-unit-missing";
      case UNIT_UNKNOWN, UNIT_UNFIT, UNIT_UNWANTED -> "quantity-unit-wrong";
      case RANGE_REVERSED, RANGE_UNWANTED -> "quantity-range";
      case OUT_OF_BOUNDS, NEGATIVE, TOO_FINE, NOT_WHOLE -> "quantity-out-of-bounds";
      case UNKNOWN_WORD -> "field-word";
      default -> "quantity-spelling";
    };
  }
}
