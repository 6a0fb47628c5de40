package goniograph.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.language.DoseNumbers.Cue;
import goniograph.language.DoseNumbers.Found;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DoseNumbersTest {
  private static final DoseNumbers ENGLISH = DoseNumbers.of(Words.of(Language.ENGLISH));
  private static final DoseNumbers ARABIC =
      DoseNumbers.of(Words.of(Language.of("ar").orElseThrow()));

  @ParameterizedTest
  @CsvSource({
    "Do this 8 times., 8, 8, NOUN, reps",
    "Lift ten times., ten, 10, NOUN, reps",
    "Twenty-five slow lifts, Twenty-five, 25, NOUN, reps",
    "twenty five seconds, twenty five, 25, NOUN, s",
    "Hold for 10 seconds., 10, 10, NOUN, s",
    "Hold for 10., 10, 10, LEAD, s",
    "Hold 10 then let go., 10, 10, LEAD, s",
    "Count to ten., ten, 10, LEAD, s",
    "a 10-second hold, 10, 10, NOUN, s",
    "10s, 10, 10, NOUN, s",
    "8 more times, 8, 8, NOUN, reps",
    "half a minute, half a, 0.5, NOUN, min",
    "two sets, two, 2, NOUN, sets",
    "Twice a day, Twice, 2, WHOLE, reps",
    "Once a day, Once a, 1, WHOLE, reps",
    "Use 50% of your strength., 50, 50, NOUN, percent",
    "a 2.5 kg weight, 2.5, 2.5, NOUN, kg",
    "for 2 weeks, 2, 2, NOUN, wk",
    "bend to 90 degrees, 90, 90, NOUN, deg",
    "a 5 lb weight, 5, 5, NOUN, other"
  })
  void findsANumberBesideANoun(String text, String part, BigDecimal value, Cue cue, String counts) {
    List<Found> found = ENGLISH.find(text);
    assertEquals(1, found.size(), text);
    Found one = found.get(0);
    assertEquals(part, text.substring(one.from(), one.to()));
    assertEquals(value, one.value());
    assertEquals(cue, one.cue());
    assertEquals(counts, one.counts());
  }

  @Test
  void findsRanges() {
    Found range = ENGLISH.find("Do 8 to 10 lifts.").get(0);
    assertEquals(new BigDecimal("8"), range.value());
    assertEquals(Optional.of(new BigDecimal("10")), range.upTo());
    assertEquals(Cue.RANGE, ENGLISH.find("between 5–10").get(0).cue());
  }

  @Test
  void findsBothSidesOfATimesSign() {
    assertEquals(
        List.of(Cue.TIMES, Cue.TIMES), ENGLISH.find("3 × 10").stream().map(Found::cue).toList());
    assertEquals(2, ENGLISH.find("3x10").size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "An ache up to 3 out of 10 is fine.",
        "0 to 3 of 10: carry on.",
        "Step 2 is next.",
        "Look at drawing 2.",
        "Look at drawings 1 to 3.",
        "Our 24-hour line",
        "Bend it to a right angle.",
        "That is all right.",
        "Hold one hand on the counter.",
        "Stop at once.",
        "Once you are steady, let go.",
        "One leg at a time",
        "Stand on two feet.",
        "The second time it is easier.",
        "Count to {hold.count}, then let go.",
        "Do this {reps}, {per_day}.",
        "+00 0000 0100",
        "2026-05-11",
        "Over 5: stop for today."
      })
  void isSilentOnOtherNumbers(String text) {
    assertEquals(List.of(), ENGLISH.find(text), text);
  }

  @ParameterizedTest
  @CsvSource({
    "كرر 8 مرات, 8, 8, NOUN, reps",
    "كرر ٨ مرات, ٨, 8, NOUN, reps",
    "لعشر ثوانٍ, لعشر, 10, NOUN, s",
    "اثبت لمدة ١٠, ١٠, 10, LEAD, s",
    "مرتين في اليوم, مرتين, 2, WHOLE, reps",
    "ثلاث جولات, ثلاث, 3, NOUN, sets",
    "وزن ٢٫٥ كغ, ٢٫٥, 2.5, NOUN, kg"
  })
  void findsArabicNumbers(String text, String part, BigDecimal value, Cue cue, String counts) {
    List<Found> found = ARABIC.find(text);
    assertEquals(1, found.size(), text);
    assertEquals(part, text.substring(found.get(0).from(), found.get(0).to()));
    assertEquals(value, found.get(0).value());
    assertEquals(cue, found.get(0).cue());
    assertEquals(counts, found.get(0).counts());
  }

  @ParameterizedTest
  @ValueSource(strings = {"الألم حتى 3 من 10 مقبول", "انظر إلى رسم 2", "عد إلى {hold.count}"})
  void isSilentOnOtherArabicNumbers(String text) {
    assertEquals(List.of(), ARABIC.find(text), text);
  }

  @Test
  void aLanguageWithoutWordsFindsNothing() {
    Words none = Words.of(Language.of("vi").orElseThrow());
    assertEquals(false, none.known());
    assertEquals(List.of(), DoseNumbers.of(none).find("10 times"));
  }

  /** Whatever the text, places lie in it and follow each other. */
  @Test
  void placesLieInTheText() {
    String[] parts = {
      "8 ", "ten ", "twenty-", "to ", "- ", "times ", "s ", "{hold} ", "x ", "١٠", "of 10 ",
      "twice "
    };
    Random random = new Random(3);
    for (int i = 0; i < 2000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(8); n > 0; n--) {
        text.append(parts[random.nextInt(parts.length)]);
      }
      int last = 0;
      for (Found found : ENGLISH.find(text.toString())) {
        assertEquals(true, found.from() >= last && found.from() < found.to(), text.toString());
        last = found.to();
        assertEquals(true, last <= text.length());
      }
    }
  }
}
