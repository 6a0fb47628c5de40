package goniograph.render.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;

/** A tagged PDF as a screen reader walks it: tags with their text, on one line. */
final class StructureText {
  private final Map<COSDictionary, Map<Integer, String>> texts = new HashMap<>();
  private final StringBuilder out = new StringBuilder();

  private StructureText() {}

  static String of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      StructureText text = new StructureText();
      for (PDPage page : document.getPages()) {
        text.read(page);
      }
      text.walk(document.getDocumentCatalog().getStructureTreeRoot(), null);
      return text.out.toString().strip().replaceAll("\\s+", " ");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void read(PDPage page) throws IOException {
    PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
    extractor.processPage(page);
    Map<Integer, String> byId = new HashMap<>();
    for (PDMarkedContent content : extractor.getMarkedContents()) {
      byId.merge(content.getMCID(), text(content), String::concat);
    }
    texts.put(page.getCOSObject(), byId);
  }

  /** Codes run from left to right on paper; a right-to-left word is turned to its reading order. */
  private static String text(PDMarkedContent content) {
    StringBuilder text = new StringBuilder();
    for (Object part : content.getContents()) {
      if (part instanceof TextPosition position) {
        text.append(position.getUnicode());
      }
    }
    boolean rightToLeft =
        text.chars()
            .anyMatch(
                c ->
                    Character.getDirectionality(c)
                        == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC);
    return rightToLeft ? text.reverse().toString() : text.toString();
  }

  private void walk(PDStructureNode node, @Nullable COSDictionary page) {
    @Nullable COSDictionary here = page;
    if (node instanceof PDStructureElement element) {
      out.append(' ').append(element.getStructureType()).append(' ');
      here = element.getPage() == null ? page : element.getPage().getCOSObject();
    }
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureNode child) {
        walk(child, here);
      } else if (kid instanceof Integer id && here != null) {
        out.append(texts.getOrDefault(here, Map.of()).getOrDefault(id, ""));
      }
    }
  }
}
