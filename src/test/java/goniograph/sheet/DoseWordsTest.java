package goniograph.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Side;
import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.dose.DoseRows;
import goniograph.dose.DoseValue;
import goniograph.dose.Quantity;
import goniograph.dose.Sides;
import goniograph.dose.Sides.Counting;
import goniograph.dose.Sides.Mode;
import goniograph.dose.Unit;
import goniograph.language.Language;
import goniograph.language.Phrases;
import goniograph.library.Library;
import goniograph.source.DiskFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Doses in the words of the demo library's own phrases, written against what patients misunderstand
 * (job.md 3.5: "3 × 10", "hold 10", "alternate", "each side", "twice a day").
 */
class DoseWordsTest {
  private static final Library DEMO = Library.read(DiskFiles.at(Path.of(""))).library();

  private static Phrases phrases(String tag) {
    TreeMap<String, String> messages = new TreeMap<>();
    DEMO.phrases(tag)
        .orElseThrow()
        .messages()
        .forEach((id, text) -> messages.put(id, text.value()));
    return Phrases.of(
        Language.of(tag).flatMap(language -> language.withDigits("latn")).orElseThrow(), messages);
  }

  private static Dose dose(int sets, int reps, int perDay, int days) {
    return Dose.NONE
        .with(DoseField.SETS, new DoseValue.Count(sets))
        .with(DoseField.REPS, new DoseValue.Count(reps))
        .with(DoseField.PER_DAY, new DoseValue.Count(perDay))
        .with(DoseField.DAYS_PER_WEEK, new DoseValue.Count(days));
  }

  private static DoseValue seconds(int n) {
    return new DoseValue.Amount(Quantity.of(n, Unit.SECOND));
  }

  private static List<String> words(String tag, Dose dose, Sides sides) {
    Wording wording = new Wording(phrases(tag));
    DoseTable table =
        new DoseWords(wording, Optional.empty(), Optional.empty(), Side.RIGHT)
            .table(DoseRows.of(dose, sides).orElseThrow(), dose);
    assertEquals(List.of(), wording.gaps());
    return table.rows().stream().map(DoseTable.Row::words).toList();
  }

  @Test
  void everySetHasItsRow() {
    Dose dose = dose(2, 8, 1, 5).with(DoseField.REST, seconds(60));
    assertEquals(
        List.of("Do it slowly 8 times.", "8 times more.", "1 time a day, 5 days a week."),
        words("en", dose, Sides.of(Mode.BOTH_TOGETHER)));
  }

  @Test
  void bothSidesAreSaidOneAfterTheOther() {
    Dose dose = dose(1, 3, 2, 7).with(DoseField.HOLD, seconds(20));
    assertEquals(
        List.of(
            "Hold. Count slowly to 20.",
            "Right side: 3 times.",
            "Left side: 3 times.",
            "2 times a day, every day."),
        words("en", dose, Sides.of(Mode.EACH_IN_TURN, Counting.PER_SIDE)));
  }

  @Test
  void overTwelveTimesAreCountedAloud() {
    assertEquals(
        "Do it slowly 15 times. Count to 15.",
        words("en", dose(1, 15, 1, 7), Sides.of(Mode.BOTH_TOGETHER)).get(0));
  }

  @Test
  void alternatingIsSaidInFull() {
    String first = words("en", dose(1, 6, 1, 7), Sides.of(Mode.ALTERNATE, Counting.TOTAL)).get(0);
    assertTrue(first.endsWith("Left, then right, then left."), first);
  }

  /** CLDR plural forms of Arabic: one, two (a dual without a numeral), few, many, other. */
  @Test
  void arabicTakesEachPluralForm() {
    Sides both = Sides.of(Mode.BOTH_TOGETHER);
    assertEquals("كرّر ببطء مرة واحدة.", words("ar", dose(1, 1, 1, 7), both).get(0));
    assertEquals("كرّر ببطء مرتين.", words("ar", dose(1, 2, 1, 7), both).get(0));
    assertEquals("كرّر ببطء 3 مرات.", words("ar", dose(1, 3, 1, 7), both).get(0));
    assertEquals("كرّر ببطء 11 مرة.", words("ar", dose(1, 11, 1, 7), both).get(0));
  }

  @Test
  void restIsSaidBesideItsClock() {
    Wording wording = new Wording(phrases("en"));
    Dose dose = dose(2, 8, 1, 5).with(DoseField.REST, seconds(90));
    DoseTable table =
        new DoseWords(wording, Optional.empty(), Optional.empty(), Side.RIGHT)
            .table(DoseRows.of(dose, Sides.of(Mode.BOTH_TOGETHER)).orElseThrow(), dose);
    assertTrue(
        table.rows().get(0).counters().contains(new Counter.Clock("Rest 90 seconds")),
        table.toString());
  }
}
