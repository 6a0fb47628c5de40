package goniograph.check;

import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.dose.DoseValue;
import goniograph.dose.Range;
import goniograph.library.Precaution.Limit;
import goniograph.library.Precaution.Within;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Feet;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.matter.Located;
import goniograph.matter.Spellings;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A step kept within limits: its dose is changed, or where that cannot be, it is left out. */
final class Kept {
  private Kept() {}

  /** Why a step cannot be kept within a limit, in words; empty where it can. */
  static Optional<String> outside(Limit limit, Rung rung) {
    Within within = limit.within().value();
    if (limit.field().value().equals(Limit.LADDER_MAX) && within instanceof Within.Counts counts) {
      return counts
          .range()
          .high()
          .filter(top -> rung.n() > top)
          .map(top -> "only up to step " + top);
    }
    if (within instanceof Within.Support support && !holds(rung, support.least())) {
      return Optional.of("only with " + Spellings.word(support.least()) + " or more");
    }
    return limit.field().value().equals(DoseField.LOAD_KIND.key())
            && within instanceof Within.Word word
            && rung.dose()
                .dose()
                .word(DoseField.LOAD_KIND)
                .filter(w -> !w.equals(word.word()))
                .isPresent()
        ? Optional.of("only with load " + word.word())
        : Optional.empty();
  }

  private static boolean holds(Rung rung, SupportNeed least) {
    return rung.conditions()
        .support()
        .need()
        .map(Located::value)
        .filter(need -> need.compareTo(least) >= 0)
        .isPresent();
  }

  /** What a limit asks for on the feet. */
  static Optional<Feet> feet(List<Limit> limits) {
    return limits.stream()
        .filter(limit -> limit.field().value().equals(Limit.FEET))
        .flatMap(
            limit ->
                limit.within().value() instanceof Within.Word word ? feet(word) : Stream.empty())
        .findFirst();
  }

  private static Stream<Feet> feet(Within.Word word) {
    return Arrays.stream(Feet.values()).filter(one -> Spellings.word(one).equals(word.word()));
  }

  /** A dose with every field moved to the nearest value inside its limit. */
  static Dose within(Dose dose, List<Limit> limits) {
    Dose kept = dose;
    for (Limit limit : limits) {
      Optional<DoseField> field = DoseField.ofKey(limit.field().value());
      if (field.isPresent()) {
        Optional<DoseValue> value =
            kept.get(field.get()).flatMap(given -> within(given, limit.within().value()));
        kept = value.isPresent() ? kept.with(field.get(), value.get()) : kept;
      }
    }
    return kept;
  }

  private static Optional<DoseValue> within(DoseValue given, Within within) {
    if (given instanceof DoseValue.Amount amount && within instanceof Within.Amounts limit) {
      return Optional.of(new DoseValue.Amount(nearest(amount.quantity(), limit.range())));
    } else if (given instanceof DoseValue.Count count && within instanceof Within.Counts limit) {
      return Optional.of(new DoseValue.Count(nearest(count.number(), limit.range())));
    } else if (given instanceof DoseValue.Scores scores && within instanceof Within.Counts limit) {
      return Optional.of(new DoseValue.Scores(nearest(scores.range(), limit.range())));
    }
    return Optional.empty();
  }

  private static Range<Integer> nearest(Range<Integer> scores, Range<Integer> range) {
    return new Range<Integer>(
        scores.low().map(low -> nearest(low, range)),
        scores.high().map(high -> nearest(high, range)));
  }

  private static <T extends Comparable<T>> T nearest(T value, Range<T> range) {
    return range
        .low()
        .filter(low -> value.compareTo(low) < 0)
        .or(() -> range.high().filter(high -> value.compareTo(high) > 0))
        .orElse(value);
  }

  /** Whether a limit allows a value that another does not. */
  static boolean laxer(Within one, Within other) {
    if (one instanceof Within.Amounts a && other instanceof Within.Amounts b) {
      return laxer(a.range(), b.range());
    } else if (one instanceof Within.Counts a && other instanceof Within.Counts b) {
      return laxer(a.range(), b.range());
    } else if (one instanceof Within.Support a && other instanceof Within.Support b) {
      return a.least().compareTo(b.least()) < 0;
    }
    return !one.equals(other);
  }

  private static <T extends Comparable<T>> boolean laxer(Range<T> one, Range<T> other) {
    boolean lower =
        other
            .low()
            .filter(end -> one.low().filter(l -> l.compareTo(end) >= 0).isEmpty())
            .isPresent();
    boolean higher =
        other
            .high()
            .filter(end -> one.high().filter(h -> h.compareTo(end) <= 0).isEmpty())
            .isPresent();
    return lower || higher;
  }

  /** The words of a limit: {@code hold ..5 s}. */
  static String words(Limit limit) {
    return limit.field().value() + " " + words(limit.within().value());
  }

  private static String words(Within within) {
    if (within instanceof Within.Amounts amounts) {
      return amounts.range().toString();
    } else if (within instanceof Within.Counts counts) {
      return counts.range().toString();
    } else if (within instanceof Within.Support support) {
      return Spellings.word(support.least()) + "..";
    }
    return ((Within.Word) within).word();
  }
}
