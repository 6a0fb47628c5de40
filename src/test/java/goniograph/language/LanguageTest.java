package goniograph.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names, directions, dates and first days as CLDR publishes them. */
class LanguageTest {

  @ParameterizedTest
  @CsvSource({
    "en, ltr, English, English",
    "pl, ltr, Polski, Polish",
    "pt, ltr, Português, Portuguese",
    "ar, rtl, العربية, Arabic",
    "ne, ltr, नेपाली, Nepali",
    "vi, ltr, Tiếng Việt, Vietnamese"
  })
  void namesAndDirections(String tag, String direction, String own, String english) {
    Language language = Language.of(tag).orElseThrow();
    assertEquals(direction, language.direction().code());
    assertEquals(own, language.ownName());
    assertEquals(english, language.englishName());
    assertEquals(tag, language.tag());
  }

  @ParameterizedTest
  @CsvSource({"en, latn", "ar-u-nu-latn, latn", "ar-u-nu-arab, arab", "ne-u-nu-deva, deva"})
  void theDigitSetIsExplicit(String tag, String digits) {
    assertEquals(digits, Language.of(tag).orElseThrow().digits());
  }

  @Test
  void theDigitSetCanBeSet() {
    Language nepali = Language.of("ne").orElseThrow();
    assertEquals("2.5", nepali.withDigits("latn").orElseThrow().number(new BigDecimal("2.5")));
    assertEquals("२.५", nepali.withDigits("deva").orElseThrow().number(new BigDecimal("2.5")));
    Language arabic = Language.of("ar").orElseThrow();
    assertEquals("٢٫٥", arabic.withDigits("arab").orElseThrow().number(new BigDecimal("2.5")));
    assertTrue(arabic.withDigits("roman").isEmpty(), "not decimal digits");
    assertTrue(arabic.withDigits("nonsense").isEmpty());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "x", "e_n", "en--", "zz", "english language"})
  void whatIsNoLanguageIsNone(String tag) {
    assertTrue(Language.of(tag).isEmpty(), tag);
  }

  @ParameterizedTest
  @CsvSource({
    "en, GB, 31 May 2027",
    "en, US, 'May 31, 2027'",
    "pl, PL, 31 maja 2027",
    "pt, PT, 31 de maio de 2027",
    "ar-u-nu-latn, EG, 31 مايو 2027",
    "ar-u-nu-arab, EG, ٣١ مايو ٢٠٢٧"
  })
  void longDates(String tag, String region, String text) {
    Language language = Language.of(tag).orElseThrow().inRegion(region);
    assertEquals(text, new Dates(language).full(LocalDate.of(2027, 5, 31)));
  }

  @Test
  void theCalendarIsGregorianEverywhere() {
    Language thai = Language.of("th").orElseThrow();
    assertTrue(new Dates(thai).full(LocalDate.of(2027, 5, 31)).endsWith("2027"));
  }

  /** CLDR week data: Monday in GB, PL, 001; Sunday in US, NP; Saturday in EG. */
  @ParameterizedTest
  @CsvSource({
    "en, GB, MONDAY",
    "en, US, SUNDAY",
    "pl, PL, MONDAY",
    "ne, NP, SUNDAY",
    "ar, EG, SATURDAY"
  })
  void firstDayOfTheWeek(String tag, String region, DayOfWeek day) {
    assertEquals(day, new Dates(Language.of(tag).orElseThrow().inRegion(region)).firstDay());
  }

  @Test
  void weekdaysInOrderAndByName() {
    assertEquals(DayOfWeek.FRIDAY, Dates.week(DayOfWeek.SATURDAY).get(6));
    Dates english = new Dates(Language.ENGLISH);
    assertEquals("Sunday", english.name(DayOfWeek.SUNDAY, Dates.Width.FULL));
    assertEquals("Mon", english.name(DayOfWeek.MONDAY, Dates.Width.SHORT));
    assertEquals("S", english.name(DayOfWeek.SATURDAY, Dates.Width.NARROW));
  }
}
