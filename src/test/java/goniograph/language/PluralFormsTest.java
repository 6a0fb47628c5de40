package goniograph.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the published CLDR cardinal rules, written out by hand as an independent second. */
class PluralFormsTest {

  /** CLDR for Arabic: 0 zero, 1 one, 2 two, n % 100 = 3..10 few, 11..99 many, else other. */
  @Test
  void arabicHasSixForms() {
    PluralForms arabic = forms("ar");
    for (int n = 0; n < 10_000; n++) {
      assertEquals(arabicForm(n), arabic.form(n), "n = " + n);
    }
    assertEquals(Set.of("zero", "one", "two", "few", "many", "other"), arabic.required());
  }

  private static String arabicForm(int n) {
    int hundredth = n % 100;
    if (n < 3) {
      return new String[] {"zero", "one", "two"}[n];
    } else if (hundredth >= 3 && hundredth <= 10) {
      return "few";
    }
    return hundredth >= 11 ? "many" : "other";
  }

  /** CLDR for Polish: 1 one; ends in 2..4 but not 12..14 few; other whole numbers many. */
  @Test
  void polishHasThreeFormsForWholeNumbersAndOneForDecimals() {
    PluralForms polish = forms("pl");
    for (int n = 0; n < 10_000; n++) {
      boolean few = n % 10 >= 2 && n % 10 <= 4 && (n % 100 < 12 || n % 100 > 14);
      assertEquals(n == 1 ? "one" : few ? "few" : "many", polish.form(n), "n = " + n);
    }
    assertEquals("other", polish.form(1.5));
    assertEquals(Set.of("one", "few", "many", "other"), polish.required());
  }

  /**
   * CLDR 49: pt one for 0 and 1 and decimals below 2, many for millions only; vi one for 0 and 1
   * (older versions had no forms there); ne one for 1 alone.
   */
  @ParameterizedTest
  @CsvSource({
    "en, 0, other",
    "en, 1, one",
    "en, 2, other",
    "en, 1.5, other",
    "pt, 0, one",
    "pt, 1, one",
    "pt, 1.5, one",
    "pt, 2, other",
    "pt, 1000000, many",
    "ne, 0, other",
    "ne, 1, one",
    "ne, 2, other",
    "vi, 0, one",
    "vi, 1, one",
    "vi, 2, other",
    "ar, 0, zero",
    "ar, 1, one",
    "ar, 2, two",
    "ar, 3, few",
    "ar, 10, few",
    "ar, 11, many",
    "ar, 99, many",
    "ar, 100, other",
    "ar, 102, other",
    "ar, 103, few",
    "ar, 1.5, other"
  })
  void cldrSamples(String tag, double number, String form) {
    assertEquals(form, forms(tag).form(number));
  }

  @ParameterizedTest
  @CsvSource({"en, 2", "pt, 2", "ne, 2", "vi, 2", "th, 1", "pl, 4", "ar, 6"})
  void onlyFormsThatNumbersOnASheetReachAreAskedFor(String tag, int count) {
    assertEquals(count, forms(tag).required().size());
  }

  /** English ordinals: 1st, 2nd, 3rd, 4th. */
  @Test
  void ordinalsHaveTheirOwnForms() {
    assertEquals(Set.of("one", "two", "few", "other"), forms("en").requiredOrdinals());
  }

  private static PluralForms forms(String tag) {
    return PluralForms.of(Language.of(tag).orElseThrow());
  }
}
