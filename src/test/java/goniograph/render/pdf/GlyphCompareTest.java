package goniograph.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.type.Family;
import goniograph.type.Fonts;
import goniograph.type.Weight;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.text.AttributedString;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Letters in the PDF stand where the JDK's own text layout puts them: the page, drawn by PDFBox
 * from the embedded fonts, against the same line drawn by {@link TextLayout}, pixel by pixel.
 */
class GlyphCompareTest {
  private static final float DPI = 200;
  private static final float SIZE = 30;
  private static final int PAGE_MM = 210;
  private static final int MARGIN_MM = 10;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "en | NotoSans | AVATAR Type: fi ffi \u201cquoted\u201d 10\u00d72",
        "pl | NotoSans | Zażółć gęślą jaźń, 2,5 kg",
        "pt | NotoSans | Atenção: mão, coração, três vezes",
        "vi | NotoSans | Ngồi ở nửa trước, ẫm ỵ Ở ặ",
        "ar | NotoSansArabic | السَّلامُ عليكم، مُهِمّةٌ (جدًّا) لا",
        "ne | NotoSansDevanagari | क्षमता प्रश्न गर्नुहोस् हृदय त्रुटि र्‍याल"
      })
  void standsWhereTheJdkPutsIt(String language, String file, String line) throws Exception {
    BufferedImage page = fromPdf(language, family(file), line);
    BufferedImage expected = fromJdk(language, file, line, page.getWidth(), page.getHeight());
    long ink = 0;
    long difference = 0;
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x = 0; x < page.getWidth(); x++) {
        int ours = 255 - (page.getRGB(x, y) & 0xFF);
        int theirs = 255 - (expected.getRGB(x, y) & 0xFF);
        ink += theirs;
        difference += Math.abs(ours - theirs);
      }
    }
    double share = (double) difference / ink;
    assertTrue(ink > 100_000, "the line has ink");
    assertTrue(share < 0.03, () -> language + ": " + share + " of the ink differs");
  }

  private static Family family(String file) {
    return switch (file) {
      case "NotoSansArabic" -> Family.ARABIC;
      case "NotoSansDevanagari" -> Family.DEVANAGARI;
      default -> Family.LATIN;
    };
  }

  private static BufferedImage fromPdf(String language, Family family, String line)
      throws IOException {
    String style =
        "p { font: %spt/100mm '%s'; white-space: nowrap }".formatted(SIZE, family.cssName());
    byte[] pdf = Pages.renderBody(language, style, "<p>" + line + "</p>").pdf();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY);
    }
  }

  /** The line at the place the style asks for, drawn as outlines. */
  private static BufferedImage fromJdk(
      String language, String file, String line, int width, int height) throws Exception {
    Font font;
    try (InputStream in = Fonts.class.getResourceAsStream("fonts/" + file + "_400Regular.ttf")) {
      font =
          Font.createFont(Font.TRUETYPE_FONT, in)
              .deriveFont(SIZE * DPI / 72)
              .deriveFont(
                  Map.of(
                      TextAttribute.KERNING, TextAttribute.KERNING_ON,
                      TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON));
    }
    AttributedString text = new AttributedString(line);
    text.addAttribute(TextAttribute.FONT, font);
    boolean rightToLeft = language.equals("ar");
    text.addAttribute(TextAttribute.RUN_DIRECTION, rightToLeft);
    TextLayout layout = new TextLayout(text.getIterator(), new FontRenderContext(null, true, true));
    double margin = MARGIN_MM / 25.4 * DPI;
    double x = rightToLeft ? PAGE_MM / 25.4 * DPI - margin - layout.getAdvance() : margin;
    double unit = SIZE * DPI / 72 / 1000;
    var face = Fonts.face(family(file), Weight.REGULAR);
    double baseline = margin + 50 / 25.4 * DPI + (face.ascent() - face.descent()) / 2.0 * unit;
    Shape outline = layout.getOutline(AffineTransform.getTranslateInstance(x, baseline));
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.setColor(Color.BLACK);
    graphics.fill(outline);
    graphics.dispose();
    assertEquals(1000, face.unitsPerEm());
    return image;
  }
}
