package goniograph.render.pdf;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/**
 * Drawings that only rank or decorate: {@code alt=""} in the page. Their replacement text is a
 * space (ISO 32000-1, 14.9.4), so a reader aloud passes over them.
 */
final class Decorations {
  private static final Pattern DRAWING = Pattern.compile("<(?:svg|img)\\b[^>]*>");
  private static final COSName ACTUAL_TEXT = COSName.getPDFName("ActualText");
  private static final String NO_ALT = "No alt attribute provided for image/replaced";

  private Decorations() {}

  /** Whether every drawing of a page says what it shows, or that it shows nothing. */
  static boolean allSaid(String xhtml) {
    Matcher drawings = DRAWING.matcher(xhtml);
    while (drawings.find()) {
      if (!drawings.group().contains(" alt=\"")) {
        return false;
      }
    }
    return true;
  }

  /** Whether a warning of the layout engine is about a drawing without words. */
  static boolean isWarning(String warning) {
    return warning.contains(NO_ALT);
  }

  /**
   * Gives every figure without words a space as its replacement text: an empty one counts as none.
   */
  static void silence(PDDocument document) {
    PDStructureTreeRoot root = document.getDocumentCatalog().getStructureTreeRoot();
    if (root != null) {
      silence(root.getCOSObject(), new HashSet<>());
    }
  }

  private static void silence(COSBase node, Set<COSBase> seen) {
    COSBase plain = node instanceof COSObject reference ? reference.getObject() : node;
    if (plain instanceof COSArray kids) {
      kids.forEach(kid -> silence(kid, seen));
    } else if (plain instanceof COSDictionary element && seen.add(element)) {
      boolean figure = COSName.getPDFName("Figure").equals(element.getCOSName(COSName.S));
      if (figure && element.getString(COSName.ALT, "").isEmpty()) {
        element.setItem(ACTUAL_TEXT, new COSString(" "));
      }
      COSBase kids = element.getDictionaryObject(COSName.K);
      if (kids != null) {
        silence(kids, seen);
      }
    }
  }
}
