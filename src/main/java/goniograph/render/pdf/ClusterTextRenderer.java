package goniograph.render.pdf;

import com.ibm.icu.text.Bidi;
import com.openhtmltopdf.extend.FontContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxFSFontMetrics;
import com.openhtmltopdf.pdfboxout.PdfBoxFontResolver.FontDescription;
import com.openhtmltopdf.pdfboxout.PdfBoxOutputDevice;
import com.openhtmltopdf.pdfboxout.PdfBoxTextRenderer;
import com.openhtmltopdf.render.AbstractOutputDevice;
import com.openhtmltopdf.render.FSFont;
import com.openhtmltopdf.render.FSFontMetrics;
import com.openhtmltopdf.render.JustificationInfo;
import goniograph.type.Cluster;
import goniograph.type.Direction;
import goniograph.type.Face;
import goniograph.type.MissingGlyph;
import goniograph.type.ShapedText;
import goniograph.type.Shaper;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Measures and draws every string of a page by shaped clusters, and notes what no font shows. */
final class ClusterTextRenderer extends PdfBoxTextRenderer {
  private static final double ROUNDING = 0.01;

  private final SheetFonts fonts;
  private final boolean rightToLeft;
  private final Set<MissingGlyph> missing = new LinkedHashSet<>();

  ClusterTextRenderer(SheetFonts fonts, boolean rightToLeft) {
    this.fonts = fonts;
    this.rightToLeft = rightToLeft;
  }

  /** The characters drawn so far that no font shows. */
  List<MissingGlyph> missing() {
    return List.copyOf(missing);
  }

  @Override
  public int getWidth(FontContext context, FSFont font, String text) {
    double width = shape((SheetFont) font, text).width() * font.getSize2D();
    double whole = Math.floor(width);
    return (int) (width - whole < ROUNDING ? whole : whole + 1);
  }

  @Override
  public void drawString(OutputDevice device, String text, float x, float y) {
    draw(device, text, x, y, null);
  }

  @Override
  public void drawString(
      OutputDevice device, String text, float x, float y, JustificationInfo spacing) {
    draw(device, text, x, y, spacing);
  }

  private void draw(
      OutputDevice device, String text, float x, float y, @Nullable JustificationInfo spacing) {
    SheetFont font = fonts.resolve(((AbstractOutputDevice) device).getFontSpecification());
    ShapedText shaped = shape(font, text);
    missing.addAll(shaped.missing());
    Pen pen = new Pen((PdfBoxOutputDevice) device, font.getSize2D(), x, y, spacing);
    shaped.clusters().forEach(pen::add);
    pen.flush();
  }

  private ShapedText shape(SheetFont font, String text) {
    return !text.isEmpty() && text.charAt(0) == RightToLeftMark.MARK
        ? Shaper.shape(text.substring(1), font.order(), Direction.RIGHT_TO_LEFT)
        : Shaper.shape(text, font.order(), unmarked(text));
  }

  /**
   * Unmarked strings are runs to the right, list markers already in the order they are seen, and
   * text of page margins, which the layout engine does not cut into runs.
   */
  private Direction unmarked(String text) {
    boolean mixed = rightToLeft && Bidi.requiresBidi(text.toCharArray(), 0, text.length());
    return mixed ? Direction.RIGHT_TO_LEFT_LINE : Direction.AUTO;
  }

  @Override
  public FSFontMetrics getFSFontMetrics(FontContext context, FSFont font, String text) {
    Face face = ((SheetFont) font).order().first();
    float unit = font.getSize2D() / face.unitsPerEm();
    PdfBoxFSFontMetrics metrics = new PdfBoxFSFontMetrics();
    metrics.setAscent(face.ascent() * unit);
    metrics.setDescent(face.descent() * unit);
    metrics.setTypoDescent(face.descent() * unit);
    metrics.setUnderlineOffset(face.underlineDepth() * unit);
    metrics.setUnderlineThickness(face.underlineThickness() * unit);
    metrics.setStrikethroughOffset(-face.capHeight() / 2f * unit);
    metrics.setStrikethroughThickness(face.underlineThickness() * unit);
    return metrics;
  }

  /** Sends neighbouring clusters of one face to the page in one go. */
  private final class Pen {
    private final PdfBoxOutputDevice device;
    private final float size;
    private final float y;
    private final @Nullable JustificationInfo spacing;
    private final StringBuilder codes = new StringBuilder();
    private double from;
    private double x;
    private @Nullable Face face;

    Pen(
        PdfBoxOutputDevice device,
        float size,
        float x,
        float y,
        @Nullable JustificationInfo spacing) {
      this.device = device;
      this.size = size;
      this.x = x;
      this.from = x;
      this.y = y;
      this.spacing = spacing;
    }

    void add(Cluster cluster) {
      if (cluster.face() != face) {
        flush();
        face = cluster.face();
      }
      codes.append(clusterFont(fonts.description(cluster.face())).code(cluster));
      x += cluster.advance() / cluster.face().unitsPerEm() * size + extra(cluster);
    }

    private double extra(Cluster cluster) {
      if (spacing == null) {
        return 0;
      }
      return cluster.text().isBlank() ? spacing.getSpaceAdjust() : spacing.getNonSpaceAdjust();
    }

    void flush() {
      if (face != null && codes.length() > 0) {
        FontDescription description = fonts.description(face);
        device.drawStringFast(codes.toString(), (float) from, y, spacing, description, size);
      }
      codes.setLength(0);
      from = x;
    }

    private ClusterFont clusterFont(FontDescription description) {
      return (ClusterFont) description.getFont();
    }
  }
}
