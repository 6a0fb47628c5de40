package goniograph.body;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The area on the ground around all points that bear: its convex hull seen from above. */
public final class SupportPolygon {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private final Geometry hull;

  private SupportPolygon(Geometry hull) {
    this.hull = hull;
  }

  /** The polygon around points; only X and Z count. */
  public static SupportPolygon around(List<Vec> points) {
    Coordinate[] flat =
        points.stream().map(p -> new Coordinate(p.x(), p.z())).toArray(Coordinate[]::new);
    return new SupportPolygon(GEOMETRY.createMultiPointFromCoords(flat).convexHull());
  }

  /** Its corners in order, at height {@code y}; empty where nothing bears. */
  public List<Vec> corners(double y) {
    return Arrays.stream(hull.getCoordinates()).map(c -> new Vec(c.x, y, c.y)).toList();
  }

  /**
   * How far inside the edge a point lies, in body heights; negative outside, and minus infinity
   * where nothing bears.
   */
  public double margin(Vec point) {
    if (hull.isEmpty()) {
      return Double.NEGATIVE_INFINITY;
    }
    Geometry p = GEOMETRY.createPoint(new Coordinate(point.x(), point.z()));
    return hull.getDimension() == 2 && hull.covers(p)
        ? hull.getBoundary().distance(p)
        : -hull.distance(p);
  }
}
