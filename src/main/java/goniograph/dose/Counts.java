package goniograph.dose;

import goniograph.dose.Fault.Kind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Whole numbers without a unit: counts and 0 to 10 scores.
 *
 * @param least the least that makes sense
 * @param most the greatest that makes sense
 */
public record Counts(int least, int most) {

  /** A score from 0 to 10, of pain or effort. */
  public static final Counts SCORE = new Counts(0, 10);

  /** How a range of counts is spelt, as a regular expression; one count alone is a number. */
  public static final String RANGE_PATTERN = Spelled.counts();

  /** Reads one count, exactly as typed. */
  public Parsed<Integer> read(String raw) {
    if (Spelled.of(raw).filter(Spelled::range).isPresent()) {
      String what = "`" + raw + "` is a range, here it takes one number";
      return new Parsed.Bad<>(new Fault(Kind.RANGE_UNWANTED, what, List.of(example())));
    }
    return readRange(raw, text -> read(text).value().isPresent())
        .map(range -> range.low().orElseThrow());
  }

  /** Reads a range of counts; one number is the range of that number. */
  public Parsed<Range<Integer>> readRange(String raw) {
    return readRange(raw, text -> readRange(text).value().isPresent());
  }

  private Parsed<Range<Integer>> readRange(String raw, Predicate<String> reads) {
    Optional<Spelled> spelled = Spelled.of(raw).filter(parts -> parts.unit().isEmpty());
    if (spelled.isEmpty()) {
      return Misspelling.ofCount(example()).explain(raw, reads);
    }
    List<BigDecimal> ends = spelled.get().ends();
    if (ends.stream().anyMatch(end -> end.scale() > 0)) {
      return bad(Kind.NOT_WHOLE, "`" + raw + "` is not a whole number");
    }
    if (ends.stream().anyMatch(this::outside)) {
      return bad(Kind.OUT_OF_BOUNDS, "`" + raw + "` is not within " + least + " to " + most);
    }
    Range<Integer> range =
        new Range<>(
            spelled.get().low().map(BigDecimal::intValueExact),
            spelled.get().high().map(BigDecimal::intValueExact));
    return range.reversed()
        ? bad(Kind.RANGE_REVERSED, "`" + raw + "` runs downwards")
        : new Parsed.Good<>(range);
  }

  private boolean outside(BigDecimal end) {
    return end.compareTo(BigDecimal.valueOf(least)) < 0
        || end.compareTo(BigDecimal.valueOf(most)) > 0;
  }

  private <T> Parsed<T> bad(Kind kind, String what) {
    return new Parsed.Bad<>(new Fault(kind, what, List.of(example())));
  }

  /** A right spelling. */
  public String example() {
    return String.valueOf(Math.min(most, Math.max(least, 3)));
  }
}
