package goniograph.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.Digest;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SheetCodeTest {
  private static final String SYMBOLS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

  private static SheetCode code(int n) {
    return SheetCode.of("hp-chair-rise", "ar", "2026.3", Digest.of("sheet " + n), 0);
  }

  private static boolean accepted(String typed) {
    return SheetCode.parse(typed).code().isPresent();
  }

  @Test
  void isTenCharactersInThreeGroups() {
    assertTrue(
        code(1)
            .grouped()
            .matches("[0-9A-HJKMNP-TV-Z]{4} [0-9A-HJKMNP-TV-Z]{4} [0-9A-HJKMNP-TV-Z]{2}"),
        code(1).grouped());
  }

  @Test
  void isTheSameForTheSameSheetAndAnotherForAnyOther() {
    String digest = Digest.of("text");
    SheetCode code = SheetCode.of("a", "en", "2026.3", digest, 0);
    assertEquals(code, SheetCode.of("a", "en", "2026.3", digest, 0));
    assertNotEquals(code, SheetCode.of("b", "en", "2026.3", digest, 0));
    assertNotEquals(code, SheetCode.of("a", "ar", "2026.3", digest, 0));
    assertNotEquals(code, SheetCode.of("a", "en", "2026.4", digest, 0));
    assertNotEquals(code, SheetCode.of("a", "en", "2026.3", Digest.of("edited"), 0));
    assertNotEquals(code, SheetCode.of("a", "en", "2026.3", digest, 1));
  }

  @Test
  void manySheetsGetManyCodes() {
    Set<SheetCode> codes = new HashSet<>();
    IntStream.range(0, 5000).forEach(n -> codes.add(code(n)));
    assertEquals(5000, codes.size());
  }

  /** Every code with one character changed: all places, all other characters. */
  @Test
  void noticesEverySingleWrongCharacter() {
    for (int n = 0; n < 50; n++) {
      String text = code(n).text();
      assertTrue(accepted(text));
      for (int place = 0; place < text.length(); place++) {
        for (int at = 0; at < SYMBOLS.length(); at++) {
          char wrong = SYMBOLS.charAt(at);
          if (wrong != text.charAt(place)) {
            String typed = text.substring(0, place) + wrong + text.substring(place + 1);
            assertTrue(!accepted(typed), text + " typed as " + typed);
          }
        }
      }
    }
  }

  /** Every code with two neighbours swapped that are not the same character. */
  @Test
  void noticesEverySwapOfNeighbours() {
    for (int n = 0; n < 500; n++) {
      String text = code(n).text();
      for (int place = 0; place + 1 < text.length(); place++) {
        char[] typed = text.toCharArray();
        typed[place] = text.charAt(place + 1);
        typed[place + 1] = text.charAt(place);
        boolean same = text.charAt(place) == text.charAt(place + 1);
        assertEquals(same, accepted(new String(typed)), text + " typed as " + new String(typed));
      }
    }
  }

  /**
   * The proof for all codes at once. The code is linear: the difference of two words is a word. So
   * an error goes unnoticed exactly where its pattern alone is a word; no pattern with one or two
   * characters other than 0 is one. This covers all wrong characters, swaps, and pairs of them.
   */
  @Test
  void noPatternOfOneOrTwoErrorsIsAWord() {
    assertTrue(accepted("0000000000"));
    for (int i = 0; i < 10; i++) {
      for (int j = i + 1; j < 10; j++) {
        for (int a = 1; a < SYMBOLS.length(); a++) {
          for (int b = 0; b < SYMBOLS.length(); b++) {
            char[] pattern = "0000000000".toCharArray();
            pattern[i] = SYMBOLS.charAt(a);
            pattern[j] = SYMBOLS.charAt(b);
            assertTrue(!accepted(new String(pattern)), new String(pattern));
          }
        }
      }
    }
    for (char b : SYMBOLS.substring(1).toCharArray()) {
      assertTrue(!accepted("000000000" + b));
    }
  }

  /** Linear: the sum of two codes, character by character in GF(32), is a code. */
  @Test
  void theSumOfTwoCodesIsACode() {
    for (int n = 0; n < 200; n++) {
      String a = code(n).text();
      String b = code(n + 1000).text();
      StringBuilder sum = new StringBuilder();
      for (int i = 0; i < a.length(); i++) {
        sum.append(SYMBOLS.charAt(SYMBOLS.indexOf(a.charAt(i)) ^ SYMBOLS.indexOf(b.charAt(i))));
      }
      assertTrue(accepted(sum.toString()), a + " + " + b);
    }
  }

  @Test
  void forgivesHowPeopleType() {
    SheetCode zeros = SheetCode.parse("0000000000").code().orElseThrow();
    assertEquals(Optional.of(zeros), SheetCode.parse("oooo OOOO-o0").code());
    for (int n = 0; n < 200; n++) {
      SheetCode code = code(n);
      String typed = code.grouped().toLowerCase(java.util.Locale.ROOT).replace('1', 'l');
      assertEquals(Optional.of(code), SheetCode.parse(" " + typed + " ").code());
    }
  }

  @Test
  void saysWhatIsWrong() {
    assertEquals(
        "A sheet code has 10 characters; this has 8.", SheetCode.parse("0000 0000").wrong());
    assertEquals(
        "A sheet code has no `U`; perhaps it is a V.", SheetCode.parse("U000000000").wrong());
    assertEquals("A sheet code has no `?`.", SheetCode.parse("0000?00000").wrong());
    assertEquals(
        "A character is wrong, or two are swapped. Look at the paper again.",
        SheetCode.parse("0000000001").wrong());
  }

  /**
   * Products by a second method: multiply the polynomials and reduce by x^5 + x^2 + 1, which is in
   * the tables of primitive polynomials (Lidl and Niederreiter, Finite Fields, 2nd edition 1997,
   * table D).
   */
  @Test
  void theFieldMultipliesAsPolynomialsDo() {
    for (int a = 0; a < 32; a++) {
      for (int b = 0; b < 32; b++) {
        int product = 0;
        for (int bit = 0; bit < 5; bit++) {
          product ^= ((b >> bit) & 1) * (a << bit);
        }
        for (int bit = 8; bit >= 5; bit--) {
          product ^= ((product >> bit) & 1) * (0b100101 << (bit - 5));
        }
        assertEquals(product, Galois32.times(a, b), a + " * " + b);
        if (b != 0) {
          assertEquals(a, Galois32.over(product, b));
        }
      }
    }
    assertEquals(31, IntStream.range(0, 31).map(Galois32::power).distinct().count());
    assertEquals(
        List.of(1, 2, 4, 8, 16, 5), IntStream.range(0, 6).mapToObj(Galois32::power).toList());
  }
}
