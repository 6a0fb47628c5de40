package goniograph.register;

import goniograph.source.Digest;
import java.math.BigInteger;
import java.util.Locale;
import java.util.Optional;

/**
 * The code on every page of a released sheet: 8 characters and 2 check characters out of the 32
 * digits and capitals without I, L, O and U.
 *
 * <p>The ten characters are a word of the Reed-Solomon code [10, 8, 3] over GF(32): with x a
 * generator of the field and c<sub>i</sub> the characters, Σ c<sub>i</sub> = 0 and Σ x<sup>i</sup>
 * c<sub>i</sub> = 0. Any two such words differ in at least three places, so one or two wrong
 * characters, and so every swap of two characters, are noticed. Source: I. S. Reed and G. Solomon,
 * Polynomial codes over certain finite fields, Journal of the Society for Industrial and Applied
 * Mathematics 8 (1960), 300-304.
 *
 * @param text the ten characters without spaces
 */
public record SheetCode(String text) implements Comparable<SheetCode> {
  private static final String SYMBOLS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  private static final int DATA = 8;
  private static final int LENGTH = 10;

  /** A code that was typed: itself, or what is wrong with it in one sentence. */
  public record Typed(Optional<SheetCode> code, String wrong) {}

  /**
   * The code of a sheet.
   *
   * @param attempt 0, or how many earlier attempts gave a code that another sheet has
   */
  static SheetCode of(String entry, String language, String release, String digest, int attempt) {
    String sheet = String.join("\n", entry, language, release, digest, Integer.toString(attempt));
    BigInteger bits = new BigInteger(Digest.of(sheet).substring(0, 10), 16);
    int[] word = new int[LENGTH];
    for (int i = 0; i < DATA; i++) {
      word[i] = bits.shiftRight(5 * i).intValue() & 31;
    }
    return new SheetCode(letters(withCheck(word)));
  }

  /**
   * Reads a code as people type it: small letters, spaces and hyphens are allowed, I and L count as
   * 1, O as 0.
   */
  public static Typed parse(String typed) {
    String text =
        typed
            .toUpperCase(Locale.ROOT)
            .replaceAll("[\\s-]", "")
            .replace('I', '1')
            .replace('L', '1')
            .replace('O', '0');
    Optional<String> wrong = wrong(text);
    return wrong.isPresent()
        ? new Typed(Optional.empty(), wrong.get())
        : new Typed(Optional.of(new SheetCode(text)), "");
  }

  private static Optional<String> wrong(String text) {
    Optional<String> odd =
        text.codePoints()
            .filter(c -> SYMBOLS.indexOf(c) < 0)
            .mapToObj(Character::toString)
            .findFirst();
    if (odd.isPresent()) {
      String hint = odd.get().equals("U") ? "; perhaps it is a V" : "";
      return Optional.of("A sheet code has no `" + odd.get() + "`" + hint + ".");
    }
    if (text.length() != LENGTH) {
      return Optional.of(
          "A sheet code has " + LENGTH + " characters; this has " + text.length() + ".");
    }
    return holds(word(text))
        ? Optional.empty()
        : Optional.of("A character is wrong, or two are swapped. Look at the paper again.");
  }

  /** In groups as on paper, for instance {@code K7F3 2M9D 4Q}. */
  public String grouped() {
    return text.substring(0, 4) + " " + text.substring(4, DATA) + " " + text.substring(DATA);
  }

  @Override
  public int compareTo(SheetCode other) {
    return text.compareTo(other.text);
  }

  /**
   * Fills in the last two characters: with s and t the two sums over the first eight, c8 + c9 = s
   * and x^8 c8 + x^9 c9 = t.
   */
  private static int[] withCheck(int[] word) {
    int s = 0;
    int t = 0;
    for (int i = 0; i < DATA; i++) {
      s ^= word[i];
      t ^= Galois32.times(Galois32.power(i), word[i]);
    }
    int x8 = Galois32.power(DATA);
    int x9 = Galois32.power(DATA + 1);
    word[DATA + 1] = Galois32.over(t ^ Galois32.times(x8, s), x8 ^ x9);
    word[DATA] = s ^ word[DATA + 1];
    return word;
  }

  private static boolean holds(int[] word) {
    int s = 0;
    int t = 0;
    for (int i = 0; i < LENGTH; i++) {
      s ^= word[i];
      t ^= Galois32.times(Galois32.power(i), word[i]);
    }
    return s == 0 && t == 0;
  }

  private static int[] word(String text) {
    return text.chars().map(SYMBOLS::indexOf).toArray();
  }

  private static String letters(int[] word) {
    StringBuilder letters = new StringBuilder();
    for (int symbol : word) {
      letters.append(SYMBOLS.charAt(symbol));
    }
    return letters.toString();
  }
}
