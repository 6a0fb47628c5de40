package goniograph.type;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FontsTest {
  @ParameterizedTest
  @CsvSource({"A, LATIN", "ż, LATIN", "ỵ, LATIN", "ق, ARABIC", "٥, ARABIC", "، , ARABIC"})
  void knowsWhichFamilyShowsACharacter(String character, Family family) {
    assertEquals(Optional.of(family), Fonts.familyShowing(character.codePointAt(0)));
  }

  @Test
  void namesWhatNoFamilyShows() {
    FaceOrder order = FaceOrder.of(Family.LATIN, Weight.REGULAR, "en");
    List<MissingGlyph> missing = Fonts.missing("Hold → 5 s ✓ → \uD83E\uDDB5", order);
    assertEquals(
        List.of("U+2192", "U+2713", "U+1F9B5"), missing.stream().map(MissingGlyph::code).toList());
    assertEquals("RIGHTWARDS ARROW", missing.get(0).name());
    assertEquals("→", missing.get(0).character());
    assertEquals(Family.LATIN, missing.get(0).nearest());
  }

  @Test
  void anUncoveredLetterIsLaidToTheFamilyOfItsScript() {
    FaceOrder order = FaceOrder.of(Family.LATIN, Weight.REGULAR, "ar");
    int lastArabicPresentationForm = 0xFBC1;
    for (MissingGlyph glyph :
        Fonts.missing(Character.toString(lastArabicPresentationForm), order)) {
      assertEquals(Family.ARABIC, glyph.nearest());
    }
  }

  @Test
  void joinersAndDirectionMarksAreNeverMissing() {
    FaceOrder order = FaceOrder.of(Family.LATIN, Weight.BOLD, "ar");
    assertEquals(
        List.of(), Fonts.missing("\u200C\u200D\u200E\u200F\u2066\u2067\u2068\u2069\u00AD", order));
  }

  @Test
  void familiesAreNamedAsInStyleSheets() {
    assertEquals(Optional.of(Family.ARABIC), Family.named("noto sans arabic"));
    assertEquals(Optional.empty(), Family.named("serif"));
  }

  /**
   * The embedded fonts give every glyph the left side bearing of its outline; that draws the same
   * only when the font does so itself (OpenType specification, {@code hmtx} and {@code glyf}).
   */
  @Test
  void outlinesStartAtTheirSideBearing() {
    for (Family family : Family.values()) {
      for (Weight weight : Weight.values()) {
        Sfnt sfnt = Fonts.face(family, weight).sfnt();
        int metrics = Short.toUnsignedInt(sfnt.table("hhea").getShort(34));
        for (int glyph = 0; glyph < sfnt.glyphCount(); glyph++) {
          ByteBuffer outline = sfnt.glyph(glyph);
          int at = glyph < metrics ? 4 * glyph + 2 : 4 * metrics + 2 * (glyph - metrics);
          if (outline.limit() > 0) {
            assertEquals(
                outline.getShort(2), sfnt.table("hmtx").getShort(at), family + " glyph " + glyph);
          }
        }
      }
    }
  }

  @Test
  void boldIsWiderThanRegular() {
    double regular = width("Stand up", Weight.REGULAR);
    assertTrue(width("Stand up", Weight.BOLD) > regular);
  }

  private static double width(String text, Weight weight) {
    FaceOrder order = FaceOrder.of(Family.LATIN, weight, "en");
    return Shaper.shape(text, order, Direction.AUTO).width();
  }
}
