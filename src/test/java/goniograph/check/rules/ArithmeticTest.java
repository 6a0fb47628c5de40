package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.language.Amounts;
import goniograph.language.Language;
import goniograph.language.Words;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArithmeticTest {
  private static final Words ENGLISH = Words.of(Language.ENGLISH);

  private static Optional<String> wrong(String sentence) {
    return new Arithmetic(ENGLISH)
        .in(sentence, Amounts.of(ENGLISH).find(sentence))
        .map(Arithmetic.Contradiction::what);
  }

  /**
   * The loads of Hansraj 2014 in pounds and newtons (factor 4.44822, NIST SP 811), 60 lb in
   * kilograms, and pounds an inch in pounds a centimetre.
   */
  @ParameterizedTest
  @CsvSource({
    "27 lb, 120, newtons",
    "40 lb, 178, newtons",
    "49 lb, 218, newtons",
    "60 lb, 267, newtons",
    "60 lb, 27.2, kg",
    "10 lb per inch, 3.94, lb per cm",
    "10 inches, 25.4, cm",
    "90 seconds, 1.5, minutes"
  })
  void oneMeasureInTwoUnits(String first, String right, String unit) {
    assertEquals(Optional.empty(), wrong("It is " + first + " (" + right + " " + unit + ")."));
    String ten = "It is " + first + ", that is about 10" + right + " " + unit + ".";
    assertTrue(wrong(ten).isPresent(), ten);
  }

  /** Sixty newtons are 13.5 pounds of force, not 12: the neutral head of Hansraj 2014. */
  @Test
  void aHeadOfTwelvePoundsIsNotSixtyNewtons() {
    assertEquals("the second would be 53.38 n", wrong("It is 12 lb, that is 60 N.").orElseThrow());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "It rises by 400 %, 5 times as much. | ''",
        "It rises by 400 %, 4 times as much. | 5 times as much",
        "It rises to 400 % of that, 4 times as much. | ''",
        "From 10 kg to 40 kg, 4 times as much. | ''",
        "From 10 kg to 40 kg, 3 times as much. | 4 times as much",
        "From 10 % to 15 %, 50 % more. | ''",
        "From 10 % to 15 %, 5 percentage points. | ''",
        "From 10 % to 15 %, 5 % more. | 5 percentage points and 50 % of the beginning",
        "3 times a week for 6 weeks, 18 sessions. | ''",
        "3 times a week for 6 weeks, 12 sessions. | 18 sessions",
        "It is 3 kg and 20 cm. | ''",
        "It doubles, 100 % more. | ''",
        "It doubles, 200 % more. | 3 times as much"
      })
  void percentsMultiplesAndSums(String sentence, String truth) {
    assertEquals(truth.isEmpty(), wrong(sentence).isEmpty(), sentence);
    assertTrue(wrong(sentence).orElse("").contains(truth), () -> wrong(sentence).toString());
  }
}
