package goniograph.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.dose.Fault.Kind;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

  @ParameterizedTest
  @CsvSource({
    "SECONDS, 10 s",
    "SECONDS, 1.5 min",
    "SECONDS, 0 s",
    "HOURS, 6 h",
    "DAYS, 7 d",
    "WEEKS, 8 wk",
    "WEEKS, 2 mo",
    "MASS, 2.5 kg",
    "MASS, 500 g",
    "FORCE, 40 N",
    "LENGTH, 45 cm",
    "LENGTH, 0.9 m",
    "ANGLE, -15 deg",
    "SHARE, 50 %"
  })
  void readsNumberSpaceAndUcumUnit(Measure measure, String text) {
    assertEquals(text, measure.read(text).value().orElseThrow().toString());
  }

  @ParameterizedTest
  @CsvSource({
    "SECONDS, 5..10 s",
    "SECONDS, ..5 s",
    "SECONDS, 2.. s",
    "LENGTH, 85..95 cm",
    "ANGLE, -15..45 deg",
    "ANGLE, -20..-10 deg",
    "SECONDS, 10 s"
  })
  void readsRangesWithTwoDots(Measure measure, String text) {
    assertEquals(text, measure.readRange(text).value().orElseThrow().toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "SECONDS | 30      | UNIT_MISSING    | 30 s, 30 min",
        "SECONDS | 1:30    | CLOCK_TIME      | 1.5 min, 90 s",
        "SECONDS | 1:20    | CLOCK_TIME      | 80 s",
        "HOURS   | 1:30    | CLOCK_TIME      | 1.5 h, 90 min",
        "SECONDS | 10\"    | QUOTE_MARK      | 10 s",
        "SECONDS | 10'     | QUOTE_MARK      | 10 min",
        "MASS    | 2,5 kg  | DECIMAL_COMMA   | 2.5 kg",
        "MASS    | 1,000 g | DECIMAL_COMMA   | 1000 g, 1.000 g",
        "SECONDS | 010     | LEADING_ZERO    | 10 s, 10 min",
        "SECONDS | 010 s   | LEADING_ZERO    | 10 s",
        "SECONDS | 05..10 s| LEADING_ZERO    | 5..10 s",
        "SECONDS | 3 sec   | UNIT_UNKNOWN    | 3 s",
        "SECONDS | 3 Secs. | UNIT_UNKNOWN    | 3 s",
        "SECONDS | 3 S     | UNIT_UNKNOWN    | 3 s",
        "MASS    | 2 Kg    | UNIT_UNKNOWN    | 2 kg",
        "WEEKS   | 2 weeks | UNIT_UNKNOWN    | 2 wk",
        "SECONDS | 2 lb    | UNIT_UNKNOWN    | 10 s",
        "SECONDS | 10s     | SPACE           | 10 s",
        "SHARE   | 50%     | SPACE           | 50 %",
        "ANGLE   | 45°     | SPACE           | 45 deg",
        "SECONDS | 10  s   | SPACE           | 10 s",
        "SECONDS | 10\u00a0s | SPACE         | 10 s",
        "SECONDS | 5-10 s  | RANGE_SPELLING  | 5..10 s",
        "SECONDS | 5–10 s  | RANGE_SPELLING  | 5..10 s",
        "SECONDS | 5 to 10 s | RANGE_SPELLING | 5..10 s",
        "SECONDS | 5...10 s| RANGE_SPELLING  | 5..10 s",
        "SECONDS | 5 s..10 s | RANGE_SPELLING | 5..10 s",
        "SECONDS | 5 s..10 min | NOT_A_NUMBER | 10 s",
        "SECONDS | 5 .. 10 s | RANGE_SPELLING | 5..10 s",
        "SECONDS | 5s - 10s | RANGE_SPELLING | 5..10 s",
        "SECONDS | <5 s    | RANGE_SPELLING  | ..5 s",
        "SECONDS | 5+ s    | NOT_A_NUMBER    | 10 s",
        "SECONDS | 10..5 s | RANGE_REVERSED  | 5..10 s",
        "SECONDS | １０ s   | FOREIGN_DIGITS  | 10 s",
        "SECONDS | ١٠ s    | FOREIGN_DIGITS  | 10 s",
        "SECONDS | १० s    | FOREIGN_DIGITS  | 10 s",
        "MASS    | ٢٫٥ kg  | FOREIGN_DIGITS  | 2.5 kg",
        "MASS    | ½ kg    | FOREIGN_DIGITS  | 0.5 kg",
        "SECONDS | -3 s    | NEGATIVE        | 3 s",
        "SECONDS | −3 s    | NUMBER_SPELLING | 10 s",
        "SECONDS | +3 s    | NUMBER_SPELLING | 3 s",
        "MASS    | .5 kg   | NUMBER_SPELLING | 0.5 kg",
        "MASS    | 5. kg   | NUMBER_SPELLING | 5 kg",
        "SECONDS | 10 kg   | UNIT_UNFIT      | 10 s",
        "SECONDS | 3 m     | UNIT_UNFIT      | 3 min",
        "SECONDS | 3x10    | TWO_NUMBERS     | 10 s",
        "SECONDS | 1e3 s   | NOT_A_NUMBER    | 10 s",
        "SECONDS | .inf    | NOT_A_NUMBER    | 10 s",
        "SECONDS | ten s   | NOT_A_NUMBER    | 10 s",
        "SECONDS | ..      | NOT_A_NUMBER    | 10 s",
        "SECONDS | 99999999999999999999 s | OUT_OF_BOUNDS | 10 s",
        "SECONDS | 1.23456 s | TOO_FINE      | 10 s"
      })
  void saysWhatIsWrongAndTheRightSpelling(Measure measure, String raw, Kind kind, String right) {
    Fault fault = measure.readRange(raw).fault().orElseThrow();
    assertEquals(kind, fault.kind(), fault.what());
    assertEquals(List.of(right.split(", ")), fault.spellings());
    assertTrue(fault.what().contains(raw), fault.what());
  }

  @Test
  void theMendNamesEverySpellingMeant() {
    Fault clock = Measure.SECONDS.read("1:30").fault().orElseThrow();
    assertEquals("write `1.5 min` or `90 s`", clock.mend());
  }

  @Test
  void oneValueIsAskedWhereARangeStands() {
    Fault fault = Measure.SECONDS.read("5..10 s").fault().orElseThrow();
    assertEquals(Kind.RANGE_UNWANTED, fault.kind());
    assertEquals(List.of("5 s", "10 s"), fault.spellings());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " "})
  void anEmptyTextIsNoValue(String raw) {
    assertEquals(Kind.EMPTY, Measure.MASS.read(raw).fault().orElseThrow().kind());
  }

  @ParameterizedTest
  @EnumSource
  void whatIsPrintedReadsAsTheSame(Measure measure) {
    Random random = new Random(5);
    for (int i = 0; i < 500; i++) {
      Unit unit = measure.units().get(random.nextInt(measure.units().size()));
      Quantity quantity = Quantity.of(random.nextInt(1_000_000) + "." + random.nextInt(1000), unit);
      assertEquals(quantity, measure.read(quantity.toString()).value().orElseThrow());
    }
  }

  @ParameterizedTest
  @EnumSource
  void anyTextReadsOrIsExplainedWithRightSpellings(Measure measure) {
    String letters = "0123456789.,:-–'\"% skgmindcwoN½٣１x+<e";
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      StringBuilder raw = new StringBuilder();
      for (int n = random.nextInt(9); n >= 0; n--) {
        raw.append(letters.charAt(random.nextInt(letters.length())));
      }
      measure
          .readRange(raw.toString())
          .fault()
          .ifPresent(fault -> assertSpellingsRead(measure, raw.toString(), fault));
    }
  }

  private static void assertSpellingsRead(Measure measure, String raw, Fault fault) {
    assertTrue(!fault.spellings().isEmpty(), raw);
    for (String spelling : fault.spellings()) {
      assertTrue(measure.readRange(spelling).value().isPresent(), raw + " → " + spelling);
    }
  }

  @Test
  void amountsCompareWhateverTheUnit() {
    Quantity minute = Quantity.of(1, Unit.MINUTE);
    assertEquals(0, minute.compareTo(Quantity.of(60, Unit.SECOND)));
    assertEquals("90 s", Quantity.of("1.5", Unit.MINUTE).in(Unit.SECOND).orElseThrow().toString());
    assertTrue(Quantity.of(1, Unit.SECOND).in(Unit.HOUR).isEmpty(), "not exact in 3 decimals");
    assertTrue(minute.in(Unit.KILOGRAM).isEmpty());
  }

  /** UCUM: a month is the mean Julian month, 365.25 d / 12. */
  @Test
  void aMonthIsTheUcumMonth() {
    assertEquals("30.4375 d", Quantity.of("30.4375", Unit.DAY).toString());
    assertEquals(0, Quantity.of(1, Unit.MONTH).compareTo(Quantity.of("30.4375", Unit.DAY)));
  }

  @Test
  void atTheEndOfARangeIsInside() {
    Range<Quantity> range = Measure.SECONDS.readRange("15..60 s").value().orElseThrow();
    assertTrue(range.contains(Quantity.of(1, Unit.MINUTE)));
    assertTrue(range.contains(Quantity.of(15, Unit.SECOND)));
    assertTrue(!range.contains(Quantity.of("60.1", Unit.SECOND)));
  }
}
