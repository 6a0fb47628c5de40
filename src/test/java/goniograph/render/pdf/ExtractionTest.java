package goniograph.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.testing.Programs;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a reader copies out of a PDF is what was written, as poppler extracts it. */
class ExtractionTest {
  /** Poppler takes the Polish "5 z 7" for one letterspaced word; all else comes back. */
  @ParameterizedTest
  @CsvSource({"en, 100", "pl, 96", "pt, 100", "ar, 100", "ne, 100", "vi, 100"})
  void wordsComeBack(String language, int percent) {
    boolean rightToLeft = language.equals("ar");
    List<String> words =
        Pages.words(language).stream().map(word -> Visual.line(word, rightToLeft)).toList();
    List<String> lost = lost(words, text(language, Pages.render(language)));
    double share = 100.0 * (words.size() - lost.size()) / words.size();
    assertTrue(share >= percent, () -> share + " % came back, lost " + lost);
  }

  /** What poppler copies out, as it is seen. */
  private static String text(String language, RenderedPdf pdf) {
    return Visual.lines(Programs.popplerText(pdf.pdf()), language.equals("ar"));
  }

  private static List<String> lost(List<String> words, String text) {
    List<String> found = new ArrayList<>(Visual.words(text));
    return words.stream().filter(word -> !found.remove(word)).toList();
  }

  @Test
  void digitsAndRangesStayTrueInArabic() {
    String text = text("ar", Pages.render("ar"));
    for (String phrase :
        List.of("من 5 إلى 10", "5 من 7", "2.5 كغ", "٠٠٠٠ في الليل", ": الساق اليمنى", "(خلفك)")) {
      assertTrue(text.contains(Visual.line(phrase, true)), () -> phrase + " is lost in\n" + text);
    }
  }

  @Test
  void anIsolatedNumberKeepsItsOrderInArabic() {
    String phone = "اتصل: <bdi dir='ltr'>+00 0000 0100</bdi> أو \u2066+00 0000 0199\u2069 الآن.";
    String style = "body { font-family: 'Noto Sans Arabic' }";
    String text = text("ar", Pages.renderBody("ar", style, "<p>" + phone + "</p>"));
    assertTrue(text.contains("+00 0000 0100"), text);
    assertTrue(text.contains("+00 0000 0199"), text);
  }

  @Test
  void pageMarginsReadRightInArabic() throws IOException {
    String style =
        "@page { @bottom-right { font-family: 'Noto Sans Arabic';"
            + " content: 'صفحة ' counter(page) ' من ' counter(pages) ': Quillhaven أ' } }";
    String seen = leftToRight(Pages.renderBody("ar", style, "<p></p>").pdf());
    String expected = Visual.line("صفحة 1 من 1: Quillhaven أ", true);
    assertEquals(expected.replace(" ", ""), seen.replace(" ", ""));
  }

  /** All characters of a page of one line by their place, as PDFBox reads them. */
  private static String leftToRight(byte[] pdf) throws IOException {
    List<TextPosition> positions = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition position) {
            positions.add(position);
          }
        };
    try (PDDocument document = Loader.loadPDF(pdf)) {
      stripper.getText(document);
    }
    return positions.stream()
        .sorted(Comparator.comparing(TextPosition::getX))
        .map(TextPosition::getUnicode)
        .collect(Collectors.joining());
  }

  @Test
  void readingOrderOfAnArabicTableIsItsSource() {
    String table = "<table><tr><td>اسم</td><td>عدد</td><td>راحة</td></tr></table>";
    String style = "body { font-family: 'Noto Sans Arabic' } table { width: 100% }";
    byte[] pdf = Pages.renderBody("ar", style, table).pdf();
    assertTrue(StructureText.of(pdf).contains("TD اسم TD عدد TD راحة"), StructureText.of(pdf));
  }
}
