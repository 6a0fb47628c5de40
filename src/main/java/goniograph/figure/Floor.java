package goniograph.figure;

import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** The floor: a strip of it in colour, in ink the line of its far edge. */
final class Floor {
  /** How far the strip reaches before and behind the body, in body heights. */
  private static final double DEEP = .235;

  /** Seen from higher than this the floor would fill the picture; the sine of 25 degrees. */
  private static final double STEEP = .42;

  private final boolean steep;
  private final double near;
  private final double far;

  /**
   * @param body a point of the body, over which the strip lies
   */
  Floor(Projection paper, Vec body) {
    double middle = paper.at(new Vec(body.x(), 0, body.z())).y;
    double half = paper.mm(DEEP) * paper.toViewer().y();
    this.steep = paper.toViewer().y() > STEEP;
    this.near = middle + half;
    this.far = middle - half;
  }

  /**
   * The floor across a panel.
   *
   * @param before the drawing that stands on it
   */
  List<Paint> painted(Envelope page, Painter before, FigureOptions options) {
    if (steep || !options.ground()) {
      return List.of();
    }
    Style style = options.style();
    Geometry edge =
        Hulls.line(new Coordinate(page.getMinX(), far), new Coordinate(page.getMaxX(), far));
    List<Paint> paints = new ArrayList<>();
    if (style == Style.COLOUR) {
      Geometry strip =
          Hulls.PAPER.toGeometry(
              new Envelope(page.getMinX(), page.getMaxX(), far, Math.min(near, page.getMaxY())));
      paints.add(new Paint.Area(strip, Colours.FLOOR));
    }
    paints.add(Paint.Line.cut(before.behind(edge, 1), style.floor(), options.weights().floor()));
    return paints;
  }
}
