package goniograph.language;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a number in digits or in words at a place among tokens. */
final class NumberWords {
  private static final BigDecimal TEN = BigDecimal.TEN;
  private static final BigDecimal TWENTY = BigDecimal.valueOf(20);

  private record Spelled(BigDecimal value, WordFinder finder) {}

  /** A number, and how many tokens it takes. */
  record Read(BigDecimal value, int length, boolean inDigits) {}

  private final List<Spelled> spelled = new ArrayList<>();

  NumberWords(Words words) {
    words
        .numbers()
        .forEach((value, list) -> spelled.add(new Spelled(value, WordFinder.of(words, list))));
  }

  /** The number at this token; the longest reading, tens and ones together. */
  Optional<Read> at(List<Token> tokens, int at) {
    if (at >= tokens.size()) {
      return Optional.empty();
    }
    Optional<BigDecimal> digits = tokens.get(at).digits();
    return digits.isPresent()
        ? digits.map(value -> new Read(value, 1, true))
        : word(tokens, at).map(tens -> withOnes(tokens, at, tens));
  }

  private Read withOnes(List<Token> tokens, int at, Read tens) {
    if (tens.value().compareTo(TWENTY) < 0) {
      return tens;
    }
    int next = at + tens.length();
    int hyphen = next < tokens.size() && tokens.get(next).folded().equals("-") ? 1 : 0;
    return word(tokens, next + hyphen)
        .filter(ones -> ones.value().compareTo(TEN) < 0 && ones.value().scale() == 0)
        .map(ones -> joined(tens, ones, hyphen))
        .orElse(tens);
  }

  private static Read joined(Read tens, Read ones, int hyphen) {
    int length = tens.length() + hyphen + ones.length();
    return new Read(tens.value().add(ones.value()), length, false);
  }

  private Optional<Read> word(List<Token> tokens, int at) {
    Optional<Read> longest = Optional.empty();
    for (Spelled number : spelled) {
      int length = number.finder().length(tokens, at);
      if (length > longest.map(Read::length).orElse(0)) {
        longest = Optional.of(new Read(number.value(), length, false));
      }
    }
    return longest;
  }
}
