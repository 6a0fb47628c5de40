package goniograph.figure;

import org.locationtech.jts.geom.Coordinate;

/**
 * A polyline read as a smooth curve: where it bends gently it runs along the chord of its
 * neighbours, where it bends sharply it has a corner.
 */
final class Bends {
  /** A bend of more than this is a corner. */
  private static final double CORNER = Math.cos(Math.toRadians(38));

  /** A curve has no steps longer than this, mm: two of them meet in a corner, like a box's. */
  private static final double LONG = 2;

  /** How far a control point may lie off the straight line, mm. */
  private static final double BULGE = .036;

  /** A control point nearer to the straight line than this, mm, makes no curve. */
  private static final double FLAT = .014;

  private static final double SLIGHT = Math.cos(Math.toRadians(4));

  private final Coordinate[] points;
  private final boolean closed;

  Bends(Coordinate[] points) {
    this.points = points;
    this.closed = points.length > 3 && points[0].equals2D(points[points.length - 1]);
  }

  int count() {
    return points.length;
  }

  boolean closed() {
    return closed;
  }

  Coordinate point(int i) {
    return points[i];
  }

  /** True where the step from {@code i} is no curve, or one that cannot be told from its chord. */
  boolean straight(int i) {
    return (corner(i) && corner(i + 1))
        || (aside(i, leaving(i)) < FLAT && aside(i, reaching(i + 1)) < FLAT);
  }

  /** How far a control point lies off the step from {@code i}. */
  private double aside(int i, Coordinate control) {
    Coordinate step = towards(points[i], points[i + 1]);
    return Math.abs(step.x * (control.y - points[i].y) - step.y * (control.x - points[i].x));
  }

  /** The control point on leaving point {@code i}. */
  Coordinate leaving(int i) {
    Coordinate step = towards(points[i], points[i + 1]);
    return control(i, corner(i) ? step : chord(i), step, points[i].distance(points[i + 1]));
  }

  /** The control point on reaching point {@code i}. */
  Coordinate reaching(int i) {
    Coordinate step = towards(points[i], points[i - 1]);
    return control(i, corner(i) ? step : back(chord(i)), step, points[i].distance(points[i - 1]));
  }

  /** A third of the step along the tangent, or less so that the curve stays at its line. */
  private Coordinate control(int i, Coordinate along, Coordinate step, double length) {
    double aside = Math.abs(along.x * step.y - along.y * step.x);
    double reach = Math.min(length / 3, BULGE / Math.max(1e-9, aside));
    return new Coordinate(points[i].x + along.x * reach, points[i].y + along.y * reach);
  }

  /** A point is its own neighbour at the end of an open line, and only there. */
  @SuppressWarnings("ReferenceEquality")
  private boolean corner(int i) {
    Coordinate before = before(i);
    Coordinate after = after(i);
    if (before == points[i] || after == points[i]) {
      return true;
    }
    Coordinate a = towards(before, points[i]);
    Coordinate b = towards(points[i], after);
    double bend = a.x * b.x + a.y * b.y;
    boolean edges = before.distance(points[i]) > LONG && points[i].distance(after) > LONG;
    return bend < CORNER || (edges && bend < SLIGHT);
  }

  private Coordinate chord(int i) {
    return towards(before(i), after(i));
  }

  private Coordinate before(int i) {
    return i > 0 ? points[i - 1] : closed ? points[points.length - 2] : points[i];
  }

  private Coordinate after(int i) {
    return i < points.length - 1 ? points[i + 1] : closed ? points[1] : points[i];
  }

  private static Coordinate towards(Coordinate a, Coordinate b) {
    double length = Math.max(1e-12, a.distance(b));
    return new Coordinate((b.x - a.x) / length, (b.y - a.y) / length);
  }

  private static Coordinate back(Coordinate d) {
    return new Coordinate(-d.x, -d.y);
  }
}
