package goniograph.figure;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * Geometry as path data for moving pictures: straight steps in whole twentieths of a mm, which a
 * screen shows as smooth and which take half the room of {@link PathData}.
 */
final class CoarsePath {
  /** Units of the path for one mm. */
  static final int UNITS = 20;

  /** Corners nearer than this to the line between their neighbours are left out, in mm. */
  private static final double TOLERANCE = .05;

  private final StringBuilder out = new StringBuilder();
  private long x;
  private long y;

  private CoarsePath() {}

  /** One line or area; "" where nothing is left of it at this coarseness. */
  static String of(Geometry shape) {
    CoarsePath path = new CoarsePath();
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      path.add(shape.getGeometryN(i));
    }
    return path.out.toString();
  }

  private void add(Geometry one) {
    if (one instanceof Polygon polygon) {
      line(polygon.getExteriorRing());
      for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
        line(polygon.getInteriorRingN(hole));
      }
    } else if (one instanceof LineString line && !line.isEmpty()) {
      line(line);
    }
  }

  private void line(LineString line) {
    Geometry open = Hulls.line(line.getCoordinates());
    Coordinate[] points = DouglasPeuckerSimplifier.simplify(open, TOLERANCE).getCoordinates();
    boolean closed = line.isClosed();
    x = units(points[0].x);
    y = units(points[0].y);
    int before = out.length();
    out.append('M').append(x).append(y < 0 ? "" : " ").append(y);
    int head = out.length();
    for (int i = 1; i < points.length - (closed ? 1 : 0); i++) {
      step(units(points[i].x), units(points[i].y), out.length() == head);
    }
    if (out.length() == head) {
      out.setLength(before);
    } else if (closed) {
      out.append('z');
    }
  }

  private void step(long toX, long toY, boolean first) {
    if (toX == x && toY == y) {
      return;
    }
    out.append(first ? "l" : toX - x < 0 ? "" : " ").append(toX - x);
    out.append(toY - y < 0 ? "" : " ").append(toY - y);
    x = toX;
    y = toY;
  }

  /** A length in the units of the path. */
  static long units(double mm) {
    return Math.round(mm * UNITS);
  }
}
