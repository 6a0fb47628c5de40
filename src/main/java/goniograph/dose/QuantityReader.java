package goniograph.dose;

import goniograph.dose.Fault.Kind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Reads quantities and their ranges on the raw text: number, one space, unit; a range has two dots.
 * A value has at most six digits before the point and three behind it.
 */
final class QuantityReader {
  private static final BigDecimal LIMIT = BigDecimal.valueOf(1_000_000);
  private static final int DECIMALS = 3;

  private final Measure measure;

  QuantityReader(Measure measure) {
    this.measure = measure;
  }

  Parsed<Quantity> one(String raw) {
    Optional<Spelled> spelled = Spelled.of(raw);
    if (spelled.isPresent() && spelled.get().range()) {
      return new Parsed.Bad<>(rangeUnwanted(raw, spelled.get()));
    }
    if (spelled.isEmpty() || spelled.get().unit().isEmpty()) {
      return Misspelling.ofQuantity(measure).explain(raw, text -> one(text).value().isPresent());
    }
    return range(raw).map(range -> range.low().orElseThrow());
  }

  Parsed<Range<Quantity>> range(String raw) {
    Optional<Spelled> spelled = Spelled.of(raw);
    Optional<Unit> unit = spelled.map(Spelled::unit).flatMap(Unit::ofCode);
    if (spelled.isEmpty() || unit.isEmpty()) {
      return Misspelling.ofQuantity(measure).explain(raw, text -> range(text).value().isPresent());
    }
    Range<Quantity> range =
        new Range<Quantity>(
            spelled.get().low().map(number -> new Quantity(number, unit.get())),
            spelled.get().high().map(number -> new Quantity(number, unit.get())));
    return fault(raw, spelled.get(), unit.get(), range)
        .<Parsed<Range<Quantity>>>map(Parsed.Bad::new)
        .orElseGet(() -> new Parsed.Good<>(range));
  }

  private Optional<Fault> fault(String raw, Spelled spelled, Unit unit, Range<Quantity> range) {
    List<BigDecimal> ends = spelled.ends();
    if (!measure.units().contains(unit)) {
      return Optional.of(unitUnfit(raw, unit));
    }
    if (!measure.signed() && ends.stream().anyMatch(end -> end.signum() < 0)) {
      return bad(Kind.NEGATIVE, "`" + raw + "` is below zero", raw.replace("-", ""));
    }
    if (ends.stream().anyMatch(end -> end.abs().compareTo(LIMIT) >= 0)) {
      return bad(Kind.OUT_OF_BOUNDS, "`" + raw + "` is too large to be meant", measure.example());
    }
    if (ends.stream().anyMatch(end -> end.scale() > DECIMALS)) {
      return bad(Kind.TOO_FINE, "`" + raw + "` has over 3 decimals", measure.example());
    }
    return range.reversed()
        ? bad(Kind.RANGE_REVERSED, "`" + raw + "` runs downwards", turned(range))
        : Optional.empty();
  }

  private Fault unitUnfit(String raw, Unit unit) {
    String units =
        measure.units().stream().map(u -> "`" + u.code() + "`").collect(Collectors.joining(" or "));
    String what = "`" + raw + "` is in `" + unit.code() + "`, here it takes " + units;
    List<String> meant =
        UnitWords.meant(unit.code(), measure).stream()
            .map(code -> raw.substring(0, raw.indexOf(' ') + 1) + code)
            .toList();
    return new Fault(Kind.UNIT_UNFIT, what, meant.isEmpty() ? List.of(measure.example()) : meant);
  }

  private Fault rangeUnwanted(String raw, Spelled spelled) {
    List<String> ends =
        spelled.ends().stream()
            .map(end -> end.toPlainString() + " " + spelled.unit())
            .filter(text -> one(text).value().isPresent())
            .toList();
    String what = "`" + raw + "` is a range, here it takes one value";
    return new Fault(Kind.RANGE_UNWANTED, what, ends.isEmpty() ? List.of(measure.example()) : ends);
  }

  private static String turned(Range<Quantity> range) {
    return new Range<>(range.high(), range.low()).toString();
  }

  private static Optional<Fault> bad(Kind kind, String what, String spelling) {
    return Optional.of(new Fault(kind, what, List.of(spelling)));
  }
}
