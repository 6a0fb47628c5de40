package goniograph.type;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShaperTest {
  private static ShapedText shape(String text, Family family, String language) {
    return Shaper.shape(text, FaceOrder.of(family, Weight.REGULAR, language), Direction.AUTO);
  }

  private static List<String> texts(ShapedText shaped) {
    return shaped.clusters().stream().map(Cluster::text).toList();
  }

  /** Second method: {@link TextLayout}, the JDK's own paragraph layout. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LATIN | AVATAR To fit: “Wave” 10×2",
        "LATIN | Zażółć gęślą jaźń",
        "LATIN | Atenção: três vezes",
        "LATIN | Ngồi ở nửa trước, ẫm ỵ",
        "ARABIC | السَّلامُ عليكم (جدًّا) 5 من 7",
        "ARABIC | اثبت 5–10 ثوانٍ لا",
        "DEVANAGARI | क्षमता गर्नुहोस् हृदय त्रुटि र्‍याल"
      })
  void isAsWideAsTheJdkSetsIt(Family family, String line) {
    Face face = Fonts.face(family, Weight.REGULAR);
    AttributedString text = new AttributedString(line);
    text.addAttribute(TextAttribute.FONT, face.font());
    TextLayout layout = new TextLayout(text.getIterator(), new FontRenderContext(null, true, true));
    double expected = layout.getAdvance() / face.unitsPerEm();
    assertEquals(expected, shape(line, family, "").width(), 0.0005);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "LATIN | Cafe\u0301 du\u0301o",
        "ARABIC | مُهِمّةٌ لا",
        "DEVANAGARI | क्षत्रिय हिन्दी र्‍याल"
      })
  void everyCharacterBelongsToOneCluster(Family family, String line) {
    List<String> texts = texts(shape(line, family, ""));
    if (family == Family.ARABIC) {
      texts = new ArrayList<>(texts);
      Collections.reverse(texts);
    }
    assertEquals(line, String.join("", texts));
  }

  @Test
  void marksStayWithTheirLetter() {
    assertEquals(List.of("e\u0301", "x"), texts(shape("e\u0301x", Family.LATIN, "")));
    assertEquals(
        List.of("هِ", "مُ"), texts(shape("مُهِ", Family.ARABIC, "ar")), "from left to right");
    assertEquals(List.of("क्षि", "क"), texts(shape("क्षिक", Family.DEVANAGARI, "ne")));
  }

  @Test
  void numbersRunToTheRightInArabic() {
    List<String> texts = texts(shape("من 12 إلى", Family.ARABIC, "ar"));
    assertEquals("ىلإ 12 نم", String.join("", texts));
  }

  @Test
  void bracketsTurnRoundInArabic() {
    int open = glyph("(", Direction.LEFT_TO_RIGHT);
    int close = glyph(")", Direction.LEFT_TO_RIGHT);
    assertNotEquals(open, close);
    assertEquals(close, glyph("(", Direction.RIGHT_TO_LEFT));
    assertEquals(open, glyph(")", Direction.RIGHT_TO_LEFT));
  }

  private static int glyph(String text, Direction direction) {
    FaceOrder order = FaceOrder.of(Family.ARABIC, Weight.REGULAR, "ar");
    return Shaper.shape(text, order, direction).clusters().get(0).glyphs().get(0).glyph();
  }

  @Test
  void lettersJoinInArabic() {
    Map<Integer, Long> shapes =
        shape("ههه", Family.ARABIC, "ar").clusters().stream()
            .map(cluster -> cluster.glyphs().get(0).glyph())
            .collect(Collectors.groupingBy(glyph -> glyph, Collectors.counting()));
    assertEquals(3, shapes.size(), "first, middle and last form differ");
  }

  /** OpenType language system NEP: other digits five and eight, another letter jha. */
  @Test
  void nepaliHasItsOwnDigits() {
    int common = glyphOf("५", "hi");
    int nepali = glyphOf("५", "ne");
    assertNotEquals(common, nepali);
    assertEquals(glyphOf("२", "hi"), glyphOf("२", "ne"));
    assertNotEquals(glyphOf("झ", "hi"), glyphOf("झ", "ne-NP"));
  }

  private static int glyphOf(String text, String language) {
    return shape(text, Family.DEVANAGARI, language).clusters().get(0).glyphs().get(0).glyph();
  }

  @Test
  void eachScriptTakesTheFamilyThatShowsIt() {
    ShapedText shaped = shape("Pull قف", Family.LATIN, "en");
    List<Family> families =
        shaped.clusters().stream().map(cluster -> cluster.face().family()).distinct().toList();
    assertEquals(List.of(Family.LATIN, Family.ARABIC), families);
    assertEquals(List.of(), shaped.missing());
  }

  @Test
  void whatCannotBeShownHasNoGlyph() {
    ShapedText shaped = shape("a✓b", Family.LATIN, "en");
    assertEquals(List.of("a", "b"), texts(shaped));
    assertEquals(List.of(0x2713), shaped.missing().stream().map(MissingGlyph::codePoint).toList());
    boolean drawsNotDef =
        shaped.clusters().stream()
            .flatMap(cluster -> cluster.glyphs().stream())
            .anyMatch(glyph -> glyph.glyph() == 0);
    assertEquals(false, drawsNotDef);
  }

  @Test
  void oddTextsShapeWithoutAFault() {
    for (String text :
        Arrays.asList(
            "", " ", "\u200F", "\u0301", "\n\t", "\u094D", "\uD83E", "ـ\u200D", "\u2069a")) {
      for (Direction direction : Direction.values()) {
        FaceOrder order = FaceOrder.of(Family.LATIN, Weight.REGULAR, "");
        ShapedText shaped = Shaper.shape(text, order, direction);
        assertEquals(shaped, Shaper.shape(text, order, direction));
      }
    }
  }
}
