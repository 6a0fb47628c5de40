package goniograph.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * An arrow along the way that a point takes: the quadratic curve nearest to its places, beside the
 * body where it covers least.
 */
final class MovementArrow {
  /** Sideways shifts that are tried, mm. */
  private static final double[] SHIFTS = {0, 3, -3, 4.5, -4.5, 6, -6, 8, -8, 10, -10, 12, -12};

  /** An arrow of two points alone is a push: farther off it would not be seen to belong there. */
  private static final double[] PUSH_SHIFTS = {0, 3, -3, 4.5, -4.5};

  /** Shares of the way's beginning and end that may be left out. */
  private static final double[] LEFT_OUT = {0, .1, .2};

  /** What leaving all of it out would cost against a mm of shift. */
  private static final double SHORTER = 12;

  /** The least length of an arrow, mm. */
  private static final double LEAST = 7;

  /** A way shorter than this, mm, has no direction. */
  private static final double STILL = 1.5;

  /** What a mm2 of covered drawing costs against a mm of shift. */
  private static final double COVERING = 3;

  /** What a point off the page costs against a mm of shift. */
  private static final double OUTSIDE = 10;

  private static final int STEPS = 16;

  private final double shaft;
  private final double headLength;
  private final double headWidth;

  MovementArrow(Weights weights) {
    this.shaft = weights.arrow();
    this.headLength = 4.8 * shaft;
    this.headWidth = 4.6 * shaft;
  }

  /**
   * An arrow on paper.
   *
   * @param shaft the curve between the heads
   * @param heads the triangles: one, or one at each end
   */
  record Shape(Geometry shaft, List<Geometry> heads) {}

  /**
   * The best arrow along {@code way}, clear of {@code taken}; empty where the point hardly moves.
   *
   * @param way the places of the point on paper, evenly spaced in time
   * @param bothWays true for a head at both ends
   * @param page where the arrow must stay
   */
  Optional<Shape> along(List<Coordinate> way, boolean bothWays, Covered taken, Envelope page) {
    Coordinate first = way.get(0);
    Coordinate last = way.get(way.size() - 1);
    if (first.distance(last) < STILL) {
      return Optional.empty();
    }
    Coordinate[] curve = {first, control(way), last};
    List<Coordinate> best = shifted(part(curve, 0), 0);
    double least = Double.MAX_VALUE;
    for (double left : LEFT_OUT) {
      Coordinate[] part = part(curve, left);
      for (double shift : way.size() == 2 ? PUSH_SHIFTS : SHIFTS) {
        double cost = .55 * Math.abs(shift) + SHORTER * left;
        if (cost >= least) {
          continue;
        }
        List<Coordinate> points = shifted(part, shift);
        cost += COVERING * covering(points, taken) + OUTSIDE * outside(points, page);
        if (cost < least - 1e-9) {
          least = cost;
          best = points;
        }
      }
    }
    return Optional.of(headed(best, bothWays));
  }

  /** About how much of the drawing an arrow and the white beside it would cover, mm2. */
  private double covering(List<Coordinate> points, Covered taken) {
    double hit = 0;
    for (int i = 0; i + 1 < points.size(); i++) {
      Coordinate a = points.get(i);
      Coordinate b = points.get(i + 1);
      double length = a.distance(b);
      double half = points.get(points.size() - 1).distance(b) < headLength ? headWidth / 2 : shaft;
      double nx = -(b.y - a.y) / length * half;
      double ny = (b.x - a.x) / length * half;
      int covered =
          (taken.at(b.x, b.y) ? 1 : 0)
              + (taken.at(b.x + nx, b.y + ny) ? 1 : 0)
              + (taken.at(b.x - nx, b.y - ny) ? 1 : 0);
      hit += covered * length * 2 * half / 3;
    }
    return hit;
  }

  private static long outside(List<Coordinate> points, Envelope page) {
    return points.stream().filter(point -> !page.contains(point)).count();
  }

  /** The middle control point of the least-squares curve with both ends fixed. */
  private static Coordinate control(List<Coordinate> way) {
    Coordinate a = way.get(0);
    Coordinate b = way.get(way.size() - 1);
    double x = 0;
    double y = 0;
    double weight = 0;
    for (int i = 1; i < way.size() - 1; i++) {
      double t = i / (way.size() - 1.0);
      double middle = 2 * t * (1 - t);
      double start = (1 - t) * (1 - t);
      x += middle * (way.get(i).x - start * a.x - t * t * b.x);
      y += middle * (way.get(i).y - start * a.y - t * t * b.y);
      weight += middle * middle;
    }
    return weight == 0
        ? new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2)
        : new Coordinate(x / weight, y / weight);
  }

  /** Scaled about its middle where too short to be read. */
  private static Coordinate[] lengthened(Coordinate a, Coordinate control, Coordinate b) {
    double k = Math.max(1, LEAST / a.distance(b));
    double x = (a.x + b.x) / 2;
    double y = (a.y + b.y) / 2;
    Coordinate[] curve = {a, control, b};
    Coordinate[] longer = new Coordinate[3];
    for (int i = 0; i < 3; i++) {
      longer[i] = new Coordinate(x + k * (curve[i].x - x), y + k * (curve[i].y - y));
    }
    return longer;
  }

  /** The middle of a curve, without {@code left} of it at both ends. */
  private static Coordinate[] part(Coordinate[] c, double left) {
    Coordinate a = at(c, left);
    Coordinate b = at(c, 1 - left);
    Coordinate middle = at(c, .5);
    Coordinate control =
        new Coordinate(2 * middle.x - (a.x + b.x) / 2, 2 * middle.y - (a.y + b.y) / 2);
    return lengthened(a, control, b);
  }

  private static List<Coordinate> shifted(Coordinate[] curve, double shift) {
    List<Coordinate> points = new ArrayList<>();
    double length = curve[0].distance(curve[2]);
    double nx = -(curve[2].y - curve[0].y) / length * shift;
    double ny = (curve[2].x - curve[0].x) / length * shift;
    for (int i = 0; i <= STEPS; i++) {
      Coordinate p = at(curve, i / (double) STEPS);
      points.add(new Coordinate(p.x + nx, p.y + ny));
    }
    return points;
  }

  private static Coordinate at(Coordinate[] c, double t) {
    double a = (1 - t) * (1 - t);
    double b = 2 * t * (1 - t);
    return new Coordinate(
        a * c[0].x + b * c[1].x + t * t * c[2].x, a * c[0].y + b * c[1].y + t * t * c[2].y);
  }

  /** The last stretch of the curve becomes the head, which points along it. */
  private Shape headed(List<Coordinate> points, boolean bothWays) {
    List<Coordinate> line = new ArrayList<>(points);
    List<Geometry> heads = new ArrayList<>();
    heads.add(head(line));
    if (bothWays) {
      Collections.reverse(line);
      heads.add(head(line));
    }
    return new Shape(Hulls.line(line.toArray(new Coordinate[0])), heads);
  }

  /** Takes the head off the end of a line. */
  private Geometry head(List<Coordinate> line) {
    Coordinate tip = line.get(line.size() - 1);
    while (line.size() > 2 && line.get(line.size() - 1).distance(tip) < headLength) {
      line.remove(line.size() - 1);
    }
    Coordinate from = line.get(line.size() - 1);
    double far = from.distance(tip);
    double ux = (tip.x - from.x) / far;
    double uy = (tip.y - from.y) / far;
    Coordinate base = new Coordinate(tip.x - ux * headLength, tip.y - uy * headLength);
    double half = headWidth / 2;
    line.add(new Coordinate(base.x + ux * .3, base.y + uy * .3));
    return Hulls.hull(
        List.of(
            tip,
            new Coordinate(base.x - uy * half, base.y + ux * half),
            new Coordinate(base.x + uy * half, base.y - ux * half)));
  }

  /** The arrow in ink, with white left free round it. */
  List<Paint> painted(Shape arrow, Style style, Weights weights) {
    double casing = 2 * weights.halo() + .2;
    List<Paint> paints = new ArrayList<>();
    paints.add(Paint.Line.solid(arrow.shaft(), Style.PAPER, shaft + casing));
    arrow
        .heads()
        .forEach(head -> paints.add(Paint.Line.solid(head.getBoundary(), Style.PAPER, casing)));
    paints.add(Paint.Line.solid(arrow.shaft(), style.mark(), shaft));
    arrow.heads().forEach(head -> paints.add(new Paint.Area(head, style.mark())));
    return paints;
  }
}
