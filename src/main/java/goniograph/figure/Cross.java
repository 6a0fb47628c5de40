package goniograph.figure;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Two strokes from corner to corner: not like this. */
final class Cross {
  private static final double STROKE = 3;
  private static final double EDGE = 2;

  private Cross() {}

  /** The cross over a box; its strokes are as heavy as the layout's lines ask. */
  static List<Paint> over(Envelope box, Style style, Weights weights) {
    double stroke = STROKE * weights.near();
    Envelope inner = new Envelope(box);
    inner.expandBy(-stroke / 2);
    Geometry strokes =
        Hulls.PAPER.createMultiLineString(
            new org.locationtech.jts.geom.LineString[] {
              Hulls.line(
                  new Coordinate(inner.getMinX(), inner.getMinY()),
                  new Coordinate(inner.getMaxX(), inner.getMaxY())),
              Hulls.line(
                  new Coordinate(inner.getMinX(), inner.getMaxY()),
                  new Coordinate(inner.getMaxX(), inner.getMinY()))
            });
    return List.of(
        Paint.Line.cut(strokes, Style.PAPER, stroke + 2 * EDGE * weights.near()),
        Paint.Line.cut(strokes, style.mark(), stroke));
  }
}
