package goniograph.language;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Reads a number in digits or in words at a place among tokens. */
final class NumberWords {
  private static final BigDecimal TEN = BigDecimal.TEN;
  private static final BigDecimal TWENTY = BigDecimal.valueOf(20);

  private record Spelled(BigDecimal value, WordFinder finder) {}

  /** A number, and how many tokens it takes. */
  record Read(BigDecimal value, int length, boolean inDigits) {}

  private final List<Spelled> spelled;
  private final List<Spelled> magnitudes;

  NumberWords(Words words) {
    spelled = spelled(words, "number.");
    magnitudes = spelled(words, "magnitude.");
  }

  private static List<Spelled> spelled(Words words, String prefix) {
    return words.below(prefix).entrySet().stream()
        .map(
            list ->
                new Spelled(new BigDecimal(list.getKey()), WordFinder.of(words, list.getValue())))
        .toList();
  }

  /** The number at this token; the longest reading: tens and ones together, times a thousand. */
  Optional<Read> at(List<Token> tokens, int at) {
    if (at >= tokens.size()) {
      return Optional.empty();
    }
    Optional<BigDecimal> digits = tokens.get(at).digits();
    Optional<Read> small =
        digits.isPresent()
            ? digits.map(value -> new Read(value, 1, true))
            : word(spelled, tokens, at).map(tens -> withOnes(tokens, at, tens));
    return small
        .map(number -> magnified(tokens, at, number))
        .or(() -> word(magnitudes, tokens, at).map(one -> magnified(tokens, at, one)));
  }

  /** {@code sixteen hundred}, {@code two hundred thousand}. */
  private Read magnified(List<Token> tokens, int at, Read number) {
    return word(magnitudes, tokens, at + number.length())
        .map(
            next ->
                magnified(
                    tokens,
                    at,
                    new Read(
                        number.value().multiply(next.value()),
                        number.length() + next.length(),
                        number.inDigits())))
        .orElse(number);
  }

  private Read withOnes(List<Token> tokens, int at, Read tens) {
    if (tens.value().compareTo(TWENTY) < 0) {
      return tens;
    }
    int next = at + tens.length();
    int hyphen = next < tokens.size() && tokens.get(next).folded().equals("-") ? 1 : 0;
    return word(spelled, tokens, next + hyphen)
        .filter(ones -> ones.value().compareTo(TEN) < 0 && ones.value().scale() == 0)
        .map(ones -> joined(tens, ones, hyphen))
        .orElse(tens);
  }

  private static Read joined(Read tens, Read ones, int hyphen) {
    int length = tens.length() + hyphen + ones.length();
    return new Read(tens.value().add(ones.value()), length, false);
  }

  private static Optional<Read> word(List<Spelled> words, List<Token> tokens, int at) {
    Optional<Read> longest = Optional.empty();
    for (Spelled number : words) {
      int length = number.finder().length(tokens, at);
      if (length > longest.map(Read::length).orElse(0)) {
        longest = Optional.of(new Read(number.value(), length, false));
      }
    }
    return longest;
  }
}
