package goniograph.figure;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The area that a ball covers on its way along a gently bent line while its radius changes: the
 * envelope of its circles. Where the line runs towards the viewer or bends too sharply there is no
 * sound envelope; then it is the union of the hulls of neighbouring circles.
 */
final class Tube {
  /** A radius that changes faster than this along the line leaves no sound envelope. */
  private static final double STEEPEST = .8;

  private static final int CAP = 14;

  private final List<Coordinate> centres;
  private final List<Double> radii;

  /**
   * @param centres of the circles on paper, two or more
   * @param radii mm, one for each
   */
  Tube(List<Coordinate> centres, List<Double> radii) {
    this.centres = List.copyOf(centres);
    this.radii = List.copyOf(radii);
  }

  Geometry area() {
    for (int i = 0; i < centres.size(); i++) {
      if (Math.abs(slope(i)) > STEEPEST) {
        return hulls();
      }
    }
    Geometry envelope = envelope();
    return envelope.isValid() ? envelope : hulls();
  }

  /** The area by the slower way, which always holds. */
  Geometry hulls() {
    List<List<Coordinate>> rims = new ArrayList<>();
    for (int i = 0; i < centres.size(); i++) {
      rims.add(List.of(Hulls.circle(centres.get(i), radii.get(i)).getCoordinates()));
    }
    return Hulls.chain(rims);
  }

  private Geometry envelope() {
    List<Coordinate> rim = new ArrayList<>();
    int last = centres.size() - 1;
    for (int i = 0; i <= last; i++) {
      rim.add(touch(i, leaning(i)));
    }
    cap(rim, last, leaning(last), -leaning(last));
    for (int i = last; i >= 0; i--) {
      rim.add(touch(i, -leaning(i)));
    }
    cap(rim, 0, -leaning(0), leaning(0) - 2 * Math.PI);
    rim.add(rim.get(0));
    return Hulls.PAPER.createPolygon(rim.toArray(new Coordinate[0]));
  }

  private void cap(List<Coordinate> rim, int i, double from, double to) {
    for (int k = 1; k < CAP; k++) {
      rim.add(touch(i, from + (to - from) * k / CAP));
    }
  }

  /** The angle from the line's direction at which the envelope touches a circle. */
  private double leaning(int i) {
    return Math.acos(-slope(i));
  }

  private Coordinate touch(int i, double angle) {
    double t = direction(i) + angle;
    double r = radii.get(i);
    return new Coordinate(centres.get(i).x + r * Math.cos(t), centres.get(i).y + r * Math.sin(t));
  }

  private double direction(int i) {
    Coordinate a = centres.get(Math.max(0, i - 1));
    Coordinate b = centres.get(Math.min(centres.size() - 1, i + 1));
    return Math.atan2(b.y - a.y, b.x - a.x);
  }

  /** How fast the radius grows along the line. */
  private double slope(int i) {
    int before = Math.max(0, i - 1);
    int after = Math.min(centres.size() - 1, i + 1);
    double way = Math.max(1e-9, centres.get(before).distance(centres.get(after)));
    return (radii.get(after) - radii.get(before)) / way;
  }
}
