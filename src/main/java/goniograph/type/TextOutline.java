package goniograph.type;

import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.util.List;

/**
 * A line of text as the outline of its shaped glyphs, for drawings: whatever shows the drawing
 * needs no font. All lengths in millimetres, y downwards as in SVG; the baseline starts at 0, 0.
 *
 * @param path the outline as SVG path data, filled by the non-zero rule; empty for blank text
 * @param width how far the text moves the pen
 * @param left left edge of the ink
 * @param top upper edge of the ink, negative above the baseline
 * @param right right edge of the ink
 * @param bottom lower edge of the ink
 * @param missing characters that could not be drawn
 */
public record TextOutline(
    String path,
    double width,
    double left,
    double top,
    double right,
    double bottom,
    List<MissingGlyph> missing) {
  private static final int DECIMALS = 3;

  public TextOutline {
    missing = List.copyOf(missing);
  }

  /**
   * The outline of a text.
   *
   * @param size the em in millimetres (1 pt is 25.4 / 72 mm)
   */
  public static TextOutline of(String text, FaceOrder order, Direction direction, double size) {
    ShapedText shaped = Shaper.shape(text, order, direction);
    Path2D path = outline(shaped, size);
    Rectangle2D ink = path.getBounds2D();
    return new TextOutline(
        svg(path),
        shaped.width() * size,
        ink.getMinX(),
        ink.getMinY(),
        ink.getMaxX(),
        ink.getMaxY(),
        shaped.missing());
  }

  private static Path2D outline(ShapedText shaped, double size) {
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    double pen = 0;
    for (Cluster cluster : shaped.clusters()) {
      double unit = size / cluster.face().unitsPerEm();
      for (PlacedGlyph glyph : cluster.glyphs()) {
        AffineTransform place =
            new AffineTransform(unit, 0, 0, unit, pen + glyph.x() * unit, -glyph.y() * unit);
        path.append(place.createTransformedShape(outline(cluster.face(), glyph.glyph())), false);
      }
      pen += cluster.advance() * unit;
    }
    return path;
  }

  private static java.awt.Shape outline(Face face, int glyph) {
    GlyphVector one = face.font().createGlyphVector(Face.PAPER, new int[] {glyph});
    return one.getOutline();
  }

  private static String svg(Path2D path) {
    StringBuilder svg = new StringBuilder();
    double[] at = new double[6];
    for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
      switch (i.currentSegment(at)) {
        case PathIterator.SEG_MOVETO -> append(svg, 'M', at, 2);
        case PathIterator.SEG_LINETO -> append(svg, 'L', at, 2);
        case PathIterator.SEG_QUADTO -> append(svg, 'Q', at, 4);
        case PathIterator.SEG_CUBICTO -> append(svg, 'C', at, 6);
        default -> svg.append('Z');
      }
    }
    return svg.toString();
  }

  private static void append(StringBuilder svg, char command, double[] at, int count) {
    svg.append(command);
    for (int i = 0; i < count; i++) {
      svg.append(i == 0 ? "" : " ").append(number(at[i]));
    }
  }

  private static String number(double value) {
    long thousandths = Math.round(value * 1000);
    return BigDecimal.valueOf(thousandths, DECIMALS).stripTrailingZeros().toPlainString();
  }
}
