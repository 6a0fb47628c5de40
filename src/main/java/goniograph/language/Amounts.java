package goniograph.language;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Finds amounts as a claim states them: percents, multiples, rates and measures in any unit, also
 * those that no dose has.
 */
public final class Amounts {
  /**
   * An amount.
   *
   * @param from its first character in the text
   * @param to behind its unit
   * @param start the first number of "from 10 to 40", if it is one
   * @param value the number
   * @param unit key of the list {@code amount.*} that its unit stands in: {@code percent}, {@code
   *     factor}, {@code lb} …; "" for a bare number
   */
  public record Amount(
      int from, int to, Optional<BigDecimal> start, BigDecimal value, String unit) {}

  private final NumberWords numbers;
  private final SortedMap<String, WordFinder> units;
  private final SortedMap<String, WordFinder> wholes;
  private final WordFinder ranges;
  private final WordFinder labels;
  private final WordFinder scales;

  private Amounts(Words words) {
    numbers = new NumberWords(words);
    units = words.finders("amount.");
    wholes = words.finders("multiple.");
    ranges = words.finder("range");
    labels = words.finder("label");
    scales = words.finder("scale");
  }

  /** A finder with the words of a language. */
  public static Amounts of(Words words) {
    return new Amounts(words);
  }

  /** All amounts of a text, in order. */
  public List<Amount> find(String text) {
    List<Token> tokens = Token.of(text);
    List<Amount> found = new ArrayList<>();
    for (int i = 0; i < tokens.size(); ) {
      i = visit(tokens, i, found);
    }
    return List.copyOf(found);
  }

  private int visit(List<Token> tokens, int at, List<Amount> found) {
    int named = named(tokens, at);
    if (named > 0) {
      return at + named;
    }
    for (Map.Entry<String, WordFinder> whole : wholes.entrySet()) {
      int length = whole.getValue().length(tokens, at);
      if (length > 0) {
        BigDecimal value = new BigDecimal(whole.getKey());
        found.add(amount(tokens, at, at + length, Optional.empty(), value, "factor"));
        return at + length;
      }
    }
    return numbers.at(tokens, at).map(number -> number(tokens, at, number, found)).orElse(at + 1);
  }

  /** How many tokens name a thing by its number, as {@code step 2}, or are a scale on its own. */
  private int named(List<Token> tokens, int at) {
    int label = labels.length(tokens, at);
    int number = numbers.at(tokens, at + label).map(NumberWords.Read::length).orElse(0);
    return label > 0 && number > 0 ? label + number : scales.length(tokens, at);
  }

  /** One number with its unit, or both ends of a range, each end with a unit or the last alone. */
  private int number(List<Token> tokens, int at, NumberWords.Read low, List<Amount> found) {
    int next = at + low.length();
    int joint = next + unitLength(tokens, next);
    int to = joint + ranges.length(tokens, joint);
    Optional<NumberWords.Read> high = to > joint ? numbers.at(tokens, to) : Optional.empty();
    int last = high.map(number -> to + number.length()).orElse(next);
    int end = last + unitLength(tokens, last);
    BigDecimal value = high.orElse(low).value();
    found.add(amount(tokens, at, end, high.map(number -> low.value()), value, unit(tokens, last)));
    return end;
  }

  private static Amount amount(
      List<Token> tokens,
      int first,
      int next,
      Optional<BigDecimal> start,
      BigDecimal value,
      String unit) {
    return new Amount(tokens.get(first).from(), tokens.get(next - 1).to(), start, value, unit);
  }

  private int unitLength(List<Token> tokens, int at) {
    return units.values().stream().mapToInt(unit -> unit.length(tokens, at)).max().orElse(0);
  }

  /** The unit with the longest name that stands here. */
  private String unit(List<Token> tokens, int at) {
    return units.entrySet().stream()
        .filter(unit -> unit.getValue().length(tokens, at) > 0)
        .max(Comparator.comparingInt(unit -> unit.getValue().length(tokens, at)))
        .map(Map.Entry::getKey)
        .orElse("");
  }
}
