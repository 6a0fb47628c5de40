package goniograph.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.language.Amounts.Amount;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AmountsTest {
  private static final Words WORDS = Words.of(Language.ENGLISH);
  private static final Amounts ENGLISH = Amounts.of(WORDS);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,600 times as much | 1600 | factor",
        "sixteen hundred times as much | 1600 | factor",
        "two thousand people | 2000 | ''",
        "2,5 kg | 2.5 | kg",
        "1,600.5 kg | 1600.5 | kg",
        "10,00 kg | 10.00 | kg",
        "a 4-fold load | 4 | factor",
        "twice as much | 2 | factor",
        "3 times a day | 3 | factor-not",
        "3 times a week | 3 | per-week",
        "40 percent | 40 | percent",
        "5 percentage points | 5 | percent-points",
        "7 out of 10 | 7 | of-ten",
        "10 pounds per inch | 10 | lb-per-in"
      })
  void oneAmount(String text, BigDecimal value, String unit) {
    Amount first = ENGLISH.find(text).get(0);
    assertEquals(0, value.compareTo(first.value()), text);
    assertEquals(unit, first.unit());
  }

  @Test
  void aRangeHasBothEnds() {
    Amount range = ENGLISH.find("from 10 % to 15 %").get(0);
    assertEquals(Optional.of(new BigDecimal("10")), range.start());
    assertEquals(new BigDecimal("15"), range.value());
    assertEquals("percent", range.unit());
  }

  @ParameterizedTest
  @ValueSource(strings = {"Look at drawing 2.", "Step 3 is next.", "Up to {n} out of 10."})
  void namesAndScalesAreNoAmounts(String text) {
    assertEquals(List.of(), ENGLISH.find(text));
  }

  /** A negation reaches over its clause and no further. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Do not push | true",
        "Never, if you can help it, push | false",
        "It does not hurt, so push | false",
        "Nobody has to push | true",
        "Do not wait but push | false",
        "Push without fear. Push | false"
      })
  void negations(String text, boolean negated) {
    int at = Math.max(text.lastIndexOf("push"), text.lastIndexOf("Push"));
    assertEquals(negated, Negation.of(WORDS).reaches(text, at));
  }

  /** Long texts end: nothing here grows with the square of their length. */
  @Test
  void longTextsAreReadThrough() {
    String text = "hold your breath and write to a@ ".repeat(20_000);
    assertEquals(20_000, WORDS.finder("breath-holding").find(text).size());
    assertEquals(List.of(), PersonFinder.of(WORDS).find(text));
    assertEquals(false, Negation.of(WORDS).reaches(text, text.length()));
  }
}
