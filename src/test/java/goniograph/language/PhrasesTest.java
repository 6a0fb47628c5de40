package goniograph.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.language.PhraseProblem.Kind;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PhrasesTest {
  private static final String SECONDS = "{n, plural, one {# second} other {# seconds}}";
  private static final String ARABIC_TIMES =
      "{n, plural, zero {# مرة} one {مرة واحدة} two {مرتين} few {# مرات} many {# مرة} other {# مرة}}";

  @Test
  void numbersTakeTheirPluralForm() {
    Phrases english = Phrases.of(Language.ENGLISH, Map.of("unit.s", SECONDS));
    assertEquals("1 second", english.amount(1, "s").text());
    assertEquals("10 seconds", english.amount(10, "s").text());
    assertEquals("1.5 seconds", english.amount(new BigDecimal("1.5"), "s").text());
    assertEquals(List.of(), english.problems());
  }

  @Test
  void arabicTakesTheDigitsThatAreSet() {
    assertEquals("8 مرات", times("ar-u-nu-latn", 8));
    assertEquals("٨ مرات", times("ar-u-nu-arab", 8));
    assertEquals("مرتين", times("ar-u-nu-latn", 2));
    assertEquals("١٠٠ مرة", times("ar-u-nu-arab", 100));
  }

  private static String times(String tag, int n) {
    Language arabic = Language.of(tag).orElseThrow();
    return Phrases.of(arabic, Map.of("times", ARABIC_TIMES)).format("times", Map.of("n", n)).text();
  }

  @Test
  void decimalsTakeTheMarkOfTheLanguage() {
    Language polish = Language.of("pl").orElseThrow();
    String kilograms = "{n, plural, one {# kg} few {# kg} many {# kg} other {# kg}}";
    Phrases phrases = Phrases.of(polish, Map.of("unit.kg", kilograms));
    assertEquals("2,5 kg", phrases.amount(new BigDecimal("2.5"), "kg").text());
  }

  @Test
  void aMissingPluralFormIsFoundEvenWhenNested() {
    String nested =
        "{side, select, left {{n, plural, one {# raz} few {# razy} other {# razy}} lewa}"
            + " other {{n, plural, one {# raz} few {# razy} many {# razy} other {# raza}}}}";
    Phrases polish = Phrases.of(Language.of("pl").orElseThrow(), Map.of("each", nested));
    assertEquals(
        List.of(new PhraseProblem(Kind.PLURAL_FORM_MISSING, "each", "many", 21)),
        polish.problems());
    assertEquals(Set.of("n", "side"), polish.arguments("each"));
    assertEquals(Set.of("left", "other"), polish.selects("each").get("side"));
  }

  @Test
  void arabicMustHaveAllSixForms() {
    Phrases arabic =
        Phrases.of(
            Language.of("ar").orElseThrow(),
            Map.of("times", "{n, plural, one {مرة} two {مرتين} other {# مرة}}"));
    assertEquals(
        List.of("few", "many", "zero"),
        arabic.problems().stream().map(PhraseProblem::detail).toList());
  }

  @Test
  void exactNumbersStandForAFormThatOnlyTheyReach() {
    String exact = "{n, plural, =1 {once} other {# times}}";
    assertEquals(List.of(), Phrases.of(Language.ENGLISH, Map.of("times", exact)).problems());
    assertEquals(
        List.of("few", "many", "one"),
        Phrases.of(Language.of("pl").orElseThrow(), Map.of("times", "{n, plural, other {# x}}"))
            .problems()
            .stream()
            .map(PhraseProblem::detail)
            .toList());
  }

  @Test
  void faultsAreDataNotExceptions() {
    Phrases phrases =
        Phrases.of(
            Language.ENGLISH,
            Map.of(
                "broken", "{n, plural, one {# x}",
                "dated", "on {d, date}",
                "open", "{",
                "times", SECONDS));
    assertEquals(
        List.of(Kind.SYNTAX, Kind.ARGUMENT_KIND, Kind.SYNTAX),
        phrases.problems().stream().map(PhraseProblem::kind).toList());
    assertEquals(Kind.ID_MISSING, kind(phrases.format("none")));
    assertEquals(Kind.ARGUMENT_MISSING, kind(phrases.format("times", Map.of("m", 1))));
    assertEquals(Kind.ARGUMENT_NOT_A_NUMBER, kind(phrases.format("times", Map.of("n", "two"))));
    assertEquals("", phrases.format("none").text());
    assertEquals(Set.of("times"), phrases.ids());
  }

  private static Kind kind(Phrased phrased) {
    return phrased.problem().orElseThrow().kind();
  }

  @Test
  void anApostropheIsAnApostrophe() {
    Phrases phrases = Phrases.of(Language.ENGLISH, Map.of("go", "Don't pull. It's {n} of 10."));
    assertEquals("Don't pull. It's 3 of 10.", phrases.format("go", Map.of("n", 3)).text());
  }

  @Test
  void everyUnitHasAnId() {
    assertEquals("unit.percent", Phrases.unitId("%"));
    assertEquals("unit.n", Phrases.unitId("N"));
    assertTrue(Phrases.of(Language.ENGLISH, Map.of()).amount(3, "wk").problem().isPresent());
  }
}
