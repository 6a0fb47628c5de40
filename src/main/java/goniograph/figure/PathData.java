package goniograph.figure;

import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * Geometry as compact path data: relative steps in hundredths of a mm, without drift. Runs of
 * gentle bends become curves, so a drawing stays smooth when it is enlarged.
 */
final class PathData {
  /** Corners nearer than this to the line between their neighbours are left out, in mm. */
  private static final double TOLERANCE = .027;

  private static final double COARSE = .05;

  private final double tolerance;
  private final boolean curved;
  private final StringBuilder out = new StringBuilder();
  private long x;
  private long y;
  private char command = ' ';

  private PathData(double tolerance, boolean curved) {
    this.tolerance = tolerance;
    this.curved = curved;
  }

  /** A line or an area whose edge is seen. */
  static String of(Geometry shape) {
    PathData path = new PathData(TOLERANCE, true);
    path.add(shape);
    return path.out.toString();
  }

  /** The same in straight steps, for what lies under a line or is white on white. */
  static String coarse(Geometry shape) {
    PathData path = new PathData(COARSE, false);
    path.add(shape);
    return path.out.toString();
  }

  private void add(Geometry shape) {
    for (int i = 0; i < shape.getNumGeometries(); i++) {
      Geometry one = shape.getGeometryN(i);
      if (one instanceof Polygon polygon) {
        line(polygon.getExteriorRing());
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          line(polygon.getInteriorRingN(hole));
        }
      } else if (one instanceof LineString line && !line.isEmpty()) {
        line(line);
      }
    }
  }

  private void line(LineString line) {
    Geometry open = Hulls.line(line.getCoordinates());
    Bends bends = new Bends(DouglasPeuckerSimplifier.simplify(open, tolerance).getCoordinates());
    move(bends.point(0));
    for (int i = 0; i + 1 < bends.count(); i++) {
      if (!curved || bends.straight(i)) {
        boolean closes = bends.closed() && i + 2 == bends.count();
        step(bends.point(i + 1), closes);
      } else {
        curve(bends.leaving(i), bends.reaching(i + 1), bends.point(i + 1));
      }
    }
    if (bends.closed()) {
      write('z');
    }
  }

  private void move(Coordinate to) {
    x = hundredths(to.x);
    y = hundredths(to.y);
    write('M');
    number(x, true);
    number(y, false);
  }

  /** A straight step; the last of a ring is left to the closing command. */
  private void step(Coordinate to, boolean closes) {
    long toX = hundredths(to.x);
    long toY = hundredths(to.y);
    if (closes || (toX == x && toY == y)) {
      return;
    }
    boolean first = write('l');
    number(toX - x, first);
    number(toY - y, false);
    x = toX;
    y = toY;
  }

  private void curve(Coordinate a, Coordinate b, Coordinate to) {
    long toX = hundredths(to.x);
    long toY = hundredths(to.y);
    boolean first = write('c');
    number(hundredths(a.x) - x, first);
    number(hundredths(a.y) - y, false);
    number(hundredths(b.x) - x, false);
    number(hundredths(b.y) - y, false);
    number(toX - x, false);
    number(toY - y, false);
    x = toX;
    y = toY;
  }

  /** Writes a command unless it repeats; true where it was written. */
  private boolean write(char next) {
    if (next == command && next != 'M' && next != 'z') {
      return false;
    }
    out.append(next);
    command = next;
    return true;
  }

  private void number(long hundredths, boolean first) {
    String number = number(hundredths);
    if (!first && number.charAt(0) != '-') {
      out.append(' ');
    }
    out.append(number);
  }

  private static long hundredths(double mm) {
    return Math.round(mm * 100);
  }

  /** Hundredths as the shortest decimal: 5 is .05, 120 is 1.2. */
  private static String number(long hundredths) {
    long size = Math.abs(hundredths);
    String tail = String.format(Locale.ROOT, ".%02d", size % 100).replaceAll("\\.?0+$", "");
    String head = size < 100 && !tail.isEmpty() ? "" : Long.toString(size / 100);
    return (hundredths < 0 ? "-" : "") + head + tail;
  }

  /** A number in hundredths. */
  static String number(double value) {
    return number(hundredths(value));
  }
}
