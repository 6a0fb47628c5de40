package goniograph.type;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.batik.parser.AWTPathProducer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextOutlineTest {
  private static TextOutline outline(String text, Family family, double size) {
    return TextOutline.of(text, FaceOrder.of(family, Weight.REGULAR, ""), Direction.AUTO, size);
  }

  /** Path read back by Batik, against the outline that the JDK's paragraph layout gives. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"LATIN | Hold 5 s", "ARABIC | اثبت 5 ثوانٍ", "DEVANAGARI | क्षमता ति"})
  void isTheOutlineTheJdkDraws(Family family, String text) throws IOException {
    TextOutline outline = outline(text, family, 10);
    Face face = Fonts.face(family, Weight.REGULAR);
    TextLayout layout = new TextLayout(text, face.font(), new FontRenderContext(null, true, true));
    Rectangle2D expected = layout.getOutline(null).getBounds2D();
    double unit = 10.0 / face.unitsPerEm();
    assertEquals(expected.getMinX() * unit, outline.left(), 0.002);
    assertEquals(expected.getMaxX() * unit, outline.right(), 0.002);
    assertEquals(expected.getMinY() * unit, outline.top(), 0.002);
    assertEquals(expected.getMaxY() * unit, outline.bottom(), 0.002);
    Shape read = AWTPathProducer.createShape(new StringReader(outline.path()), 1);
    assertEquals(outline.left(), read.getBounds2D().getMinX(), 0.002);
    assertEquals(outline.bottom(), read.getBounds2D().getMaxY(), 0.002);
  }

  @Test
  void growsWithTheSize() {
    TextOutline small = outline("Hold", Family.LATIN, 4);
    TextOutline large = outline("Hold", Family.LATIN, 8);
    assertEquals(2 * small.width(), large.width(), 1e-9);
    assertEquals(2 * small.top(), large.top(), 1e-4);
    assertTrue(small.top() < 0 && small.right() <= small.width());
  }

  @Test
  void mixedScriptsStandOnOneLine() {
    TextOutline mixed = outline("A قف", Family.LATIN, 5);
    double parts = outline("A ", Family.LATIN, 5).width() + outline("قف", Family.LATIN, 5).width();
    assertEquals(parts, mixed.width(), 1e-9);
  }

  @Test
  void blankTextHasNoPath() {
    TextOutline blank = outline("  ", Family.LATIN, 5);
    assertEquals("", blank.path());
    assertTrue(blank.width() > 0);
    assertEquals(0, blank.right());
  }

  @Test
  void tellsWhatItCannotDraw() {
    assertEquals(
        List.of("U+2192"),
        outline("a → b", Family.LATIN, 5).missing().stream().map(MissingGlyph::code).toList());
  }
}
