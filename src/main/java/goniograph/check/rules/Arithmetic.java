package goniograph.check.rules;

import goniograph.language.Amounts.Amount;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Works out what the numbers of one sentence say about each other. */
final class Arithmetic {
  /** Rounded numbers agree within this share; common practice, no source. */
  private static final double ROUNDING = 0.05;

  private static final double HUNDRED = 100;
  private static final double POUND_IN_KG = 0.45359237;
  private static final double GRAVITY = 9.80665;
  private static final double INCH_IN_CM = 2.54;

  /** Units of one kind, each in the kind's base unit. A newton weighs down as 1/9.80665 kg does. */
  private static final List<Map<String, Double>> KINDS =
      List.of(
          Map.of("kg", 1.0, "g", 0.001, "lb", POUND_IN_KG, "n", 1 / GRAVITY),
          Map.of("cm", 1.0, "m", 100.0, "in", INCH_IN_CM, "ft", 12 * INCH_IN_CM),
          Map.of("s", 1.0, "min", 60.0, "h", 3600.0),
          Map.of(
              "kg-per-cm",
              1.0,
              "lb-per-in",
              POUND_IN_KG / INCH_IN_CM,
              "lb-per-cm",
              POUND_IN_KG,
              "n-per-cm",
              1 / GRAVITY));

  /** Two numbers of a sentence that cannot both be true, and what is true. */
  record Contradiction(int from, int to, String what) {}

  private final WordFinder equal;
  private final WordFinder of;

  Arithmetic(Words words) {
    equal = words.finder("claim.equal");
    of = words.finder("claim.of");
  }

  /** The first contradiction of a sentence. */
  Optional<Contradiction> in(String sentence, List<Amount> amounts) {
    return Stream.of(
            ends(amounts),
            percentAndMultiple(sentence, amounts),
            units(sentence, amounts),
            sessions(amounts))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** "From 10 to 40 kg, 3 times as much", "from 10 % to 15 %, 5 % more". */
  private static Optional<Contradiction> ends(List<Amount> amounts) {
    return pairs(amounts)
        .filter(pair -> pair.first().start().isPresent() && positive(pair.first()))
        .flatMap(pair -> ends(pair).stream())
        .findFirst();
  }

  private record Pair(Amount first, Amount second) {
    Contradiction says(String what) {
      int from = Math.min(first.from(), second.from());
      return new Contradiction(from, Math.max(first.to(), second.to()), what);
    }
  }

  /** Every ordered pair. */
  private static Stream<Pair> pairs(List<Amount> amounts) {
    List<Pair> pairs = new ArrayList<>();
    for (Amount first : amounts) {
      amounts.stream()
          .filter(second -> second != first)
          .forEach(second -> pairs.add(new Pair(first, second)));
    }
    return pairs.stream();
  }

  private static boolean positive(Amount range) {
    return range.start().filter(start -> start.signum() > 0).isPresent();
  }

  private static Optional<Contradiction> ends(Pair pair) {
    double start = pair.first().start().map(BigDecimal::doubleValue).orElse(1.0);
    double end = value(pair.first());
    double said = value(pair.second());
    double times = end / start;
    return switch (pair.second().unit()) {
      case "factor" -> unless(near(said, times) || near(1 / said, times), pair, multiple(times));
      case "factor-more" ->
          unless(near(said, times) || near(said, times - 1), pair, multiple(times));
      case "percent-points" ->
          unless(near(said, Math.abs(end - start)), pair, points(Math.abs(end - start)));
      case "percent" -> percent(pair, start, end, said);
      default -> Optional.empty();
    };
  }

  private static Optional<Contradiction> percent(Pair pair, double start, double end, double said) {
    double change = HUNDRED * Math.abs(end - start) / start;
    boolean ofPercents = pair.first().unit().equals("percent");
    String points = ofPercents ? points(Math.abs(end - start)) + " and " : "";
    return unless(near(said, change), pair, points + number(change) + " % of the beginning");
  }

  /** "Raises the load 400 %, four times as much": 400 % more is 5 times as much. */
  private Optional<Contradiction> percentAndMultiple(String sentence, List<Amount> amounts) {
    return pairs(amounts)
        .filter(pair -> pair.first().unit().equals("percent") && pair.first().start().isEmpty())
        .filter(pair -> pair.second().unit().startsWith("factor"))
        .flatMap(
            pair -> {
              boolean share = startsWith(of, sentence.substring(pair.first().to()));
              double times = value(pair.first()) / HUNDRED + (share ? 0 : 1);
              double said = value(pair.second());
              boolean more = pair.second().unit().equals("factor-more");
              boolean agree = near(said, times) || (more && near(said, times - 1));
              return unless(agree, pair, multiple(times)).stream();
            })
        .findFirst();
  }

  /** "60 lb (60 kg)". */
  private Optional<Contradiction> units(String sentence, List<Amount> amounts) {
    for (int i = 1; i < amounts.size(); i++) {
      Pair pair = new Pair(amounts.get(i - 1), amounts.get(i));
      String between = sentence.substring(pair.first().to(), pair.second().from());
      Optional<Double> converted = converted(pair);
      if (converted.isPresent() && joins(between)) {
        boolean same = near(value(pair.second()), converted.get());
        String truth = number(converted.get()) + " " + pair.second().unit().replace("-per-", "/");
        if (!same) {
          return Optional.of(pair.says("the second would be " + truth));
        }
      }
    }
    return Optional.empty();
  }

  /** Nothing but words that make the second say the first again. */
  private boolean joins(String between) {
    List<WordFinder.Found> found = equal.find(between);
    StringBuilder rest = new StringBuilder(between);
    for (int i = found.size() - 1; i >= 0; i--) {
      rest.delete(found.get(i).from(), found.get(i).to());
    }
    return !found.isEmpty() && rest.toString().replace(',', ' ').isBlank();
  }

  private static Optional<Double> converted(Pair pair) {
    String from = pair.first().unit();
    String to = pair.second().unit();
    return from.equals(to)
        ? Optional.empty()
        : KINDS.stream()
            .filter(kind -> kind.containsKey(from) && kind.containsKey(to))
            .findFirst()
            .map(kind -> value(pair.first()) * base(kind, from) / base(kind, to));
  }

  private static double base(Map<String, Double> kind, String unit) {
    return kind.getOrDefault(unit, 1.0);
  }

  /** "3 times a week for 6 weeks, 12 sessions". */
  private static Optional<Contradiction> sessions(List<Amount> amounts) {
    Optional<Amount> rate = unit(amounts, "per-week");
    Optional<Amount> weeks = unit(amounts, "wk");
    return unit(amounts, "sessions")
        .filter(sum -> rate.isPresent() && weeks.isPresent())
        .flatMap(
            sum -> {
              double product = value(rate.orElseThrow()) * value(weeks.orElseThrow());
              Pair pair = new Pair(rate.orElseThrow(), sum);
              return unless(near(value(sum), product), pair, number(product) + " sessions");
            });
  }

  private static Optional<Amount> unit(List<Amount> amounts, String unit) {
    return amounts.stream().filter(one -> one.unit().equals(unit)).findFirst();
  }

  private static Optional<Contradiction> unless(boolean agree, Pair pair, String truth) {
    return agree ? Optional.empty() : Optional.of(pair.says("it would be " + truth));
  }

  private static boolean startsWith(WordFinder finder, String text) {
    return finder.find(text).stream().anyMatch(one -> text.substring(0, one.from()).isBlank());
  }

  private static boolean near(double said, double worked) {
    return Math.abs(said - worked) <= ROUNDING * Math.abs(worked) + 1e-9;
  }

  private static double value(Amount amount) {
    return amount.value().doubleValue();
  }

  private static String multiple(double times) {
    return number(times) + " times as much";
  }

  private static String points(double points) {
    return number(points) + " percentage points";
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
  }
}
