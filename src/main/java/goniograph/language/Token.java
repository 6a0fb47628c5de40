package goniograph.language;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One word, number or mark of a text.
 *
 * @param from its first character
 * @param to behind its last character
 * @param folded the word to compare: lower case, Arabic without vowel marks and with plain alif
 * @param digits its value if it is written in digits
 */
record Token(int from, int to, String folded, Optional<BigDecimal> digits) {
  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<hidden>\\{[^{}]*\\}|\\[[a-z0-9-]+\\])"
              + "|(?<thousands>\\p{Nd}{1,3}(?:[,٬]\\p{Nd}{3})+(?!\\p{Nd})(?:[.٫]\\p{Nd}+)?)"
              + "|(?<number>\\p{Nd}+(?:[.,٫]\\p{Nd}+)?)"
              + "|[\\p{L}\\p{M}ـ]+(?:['’][\\p{L}\\p{M}]+)*"
              + "|\\.\\.|\\S");
  private static final Pattern VOWEL_MARKS = Pattern.compile("[\\u064B-\\u065F\\u0670\\u0640]");

  /** The tokens of a text. A slot in braces and a claim mark in brackets are one token each. */
  static List<Token> of(String text) {
    List<Token> tokens = new ArrayList<>();
    Matcher found = TOKEN.matcher(text);
    while (found.find()) {
      Optional<BigDecimal> digits =
          Optional.ofNullable(found.group("number"))
              .or(() -> Optional.ofNullable(found.group("thousands")).map(Token::ungrouped))
              .map(Token::value);
      String folded = found.group("hidden") != null ? "{}" : fold(found.group());
      tokens.add(
          new Token(
              found.start(), found.end(), digits.map(BigDecimal::toString).orElse(folded), digits));
    }
    return tokens;
  }

  /** The folded words of a phrase. */
  static List<String> words(String phrase) {
    return of(phrase).stream().map(Token::folded).toList();
  }

  private static String fold(String word) {
    String plain = VOWEL_MARKS.matcher(word).replaceAll("");
    return plain.toLowerCase(Locale.ROOT).replaceAll("[أإآٱ]", "ا").replace('’', '\'');
  }

  /** {@code 1,600} is sixteen hundred: a comma before three digits groups them. */
  private static String ungrouped(String digits) {
    return digits.replaceAll("[,٬]", "");
  }

  private static BigDecimal value(String digits) {
    StringBuilder latin = new StringBuilder();
    digits
        .codePoints()
        .forEach(
            point ->
                latin.append(
                    Character.isDigit(point)
                        ? Character.forDigit(Character.digit(point, 10), 10)
                        : '.'));
    return new BigDecimal(latin.toString());
  }
}
