package goniograph.render;

import goniograph.sheet.Drawings;
import goniograph.sheet.Sheet;
import java.util.Map;

/** A page model as HTML: self-contained, without script, in the reader's own fonts. */
public final class ScreenRenderer {
  private ScreenRenderer() {}

  /** The page. */
  public static String html(Sheet sheet) {
    return Templates.fill(
        "screen/sheet.jte",
        Map.of(
            "sheet",
            sheet,
            "glyphs",
            new Glyphs(sheet.identity().rightToLeft(), 1),
            "style",
            Templates.style("screen.css") + motion(sheet)));
  }

  private static String motion(Sheet sheet) {
    return sheet.drawings().flatMap(Drawings::motion).map(Drawings.Motion::style).orElse("");
  }
}
