package goniograph.render;

import goniograph.render.pdf.PdfFacts;
import goniograph.render.pdf.PdfRenderer;
import goniograph.render.pdf.RenderedPdf;
import goniograph.sheet.Sheet;
import java.time.LocalDate;
import java.util.Map;

/**
 * A page model as PDF. The page is set twice: once to see where its lines fall, then with the area
 * shifted so that the fold of the sheet runs through white between two steps.
 */
public final class PaperRenderer {
  private final PdfRenderer renderer = new PdfRenderer();

  /**
   * Sets a sheet.
   *
   * @param digest digest of what the sheet is made from, in hexadecimal
   * @param today the day that counts as today
   */
  public Paper render(Sheet sheet, Layout layout, String digest, LocalDate today) {
    boolean rightToLeft = sheet.identity().rightToLeft();
    PaperPlan loose =
        PaperPlan.unfolded(
            sheet.identity().language(), rightToLeft, script(sheet.identity().language()));
    PdfFacts facts =
        new PdfFacts(sheet.head().title(), sheet.identity().language(), rightToLeft, digest, today);
    RenderedPdf first = renderer.render(xhtml(sheet, layout, loose), facts);
    PaperPlan folded = Fold.of(first.blocks(), loose.height()).map(loose::folded).orElse(loose);
    RenderedPdf last =
        folded.equals(loose) ? first : renderer.render(xhtml(sheet, layout, folded), facts);
    return new Paper(
        last.pdf(), last.pages(), Fit.of(last.blocks()), last.missing(), last.warnings());
  }

  private static String xhtml(Sheet sheet, Layout layout, PaperPlan plan) {
    return Templates.fill(
        layout.template(),
        Map.of(
            "sheet",
            sheet,
            "glyphs",
            new Glyphs(plan.rightToLeft(), layout.glyphScale()),
            "plan",
            plan,
            "style",
            Templates.style(layout.style())));
  }

  /** The writing system's style class. */
  private static String script(String language) {
    return switch (language) {
      case "ar" -> "arab";
      case "ne" -> "deva";
      case "vi" -> "latn stacked";
      default -> "latn";
    };
  }
}
