package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Plane geometry of projected balls, discs and their hulls. */
final class Hulls {
  /** Corners of a drawn circle: at print size the chord stays within .02 mm of the arc. */
  private static final int CORNERS = 32;

  /** Corners of a rounded right angle: a rounding of 1 mm is true to .01 mm. */
  private static final int ROUNDING = 6;

  /** How exactly a strip follows its line, mm. */
  private static final double BAND = .015;

  static final GeometryFactory PAPER = new GeometryFactory();

  private Hulls() {}

  /** The outline of a projected ball. */
  static List<Coordinate> ball(Projection paper, Vec centre, double radius) {
    Vec a = paper.right().times(radius);
    Vec b = paper.up().times(radius);
    return disc(paper, centre, a, b);
  }

  /** The outline of a projected flat ellipse with the given half axes. */
  static List<Coordinate> disc(Projection paper, Vec centre, Vec a, Vec b) {
    List<Coordinate> rim = new ArrayList<>(CORNERS);
    for (int i = 0; i < CORNERS; i++) {
      double t = 2 * Math.PI * i / CORNERS;
      rim.add(paper.at(centre.plus(a.times(Math.cos(t))).plus(b.times(Math.sin(t)))));
    }
    return rim;
  }

  /** The outline of a projected ellipsoid in a frame, centred at {@code centre} of that frame. */
  static List<Coordinate> ellipsoid(Projection paper, Frame frame, Vec centre, Vec radii) {
    Vec a = frame.axes().x().times(radii.x());
    Vec b = frame.axes().y().times(radii.y());
    Vec c = frame.axes().z().times(radii.z());
    Vec middle = frame.point(centre);
    List<Coordinate> rim = new ArrayList<>(CORNERS);
    for (int i = 0; i < CORNERS; i++) {
      double t = 2 * Math.PI * i / CORNERS;
      Vec d = paper.right().times(Math.cos(t)).plus(paper.up().times(Math.sin(t)));
      Vec support = a.times(a.dot(d)).plus(b.times(b.dot(d))).plus(c.times(c.dot(d)));
      double length = new Vec(a.dot(d), b.dot(d), c.dot(d)).length();
      rim.add(paper.at(middle.plus(support.times(1 / length))));
    }
    return rim;
  }

  static Geometry hull(Collection<Coordinate> points) {
    return new ConvexHull(points.toArray(new Coordinate[0]), PAPER).getConvexHull();
  }

  /** The union of the hulls of neighbouring outlines. */
  static Geometry chain(List<List<Coordinate>> rims) {
    return rims.size() == 1 ? hull(rims.get(0)) : Sweep.chain(rims).orElseGet(() -> overlaid(rims));
  }

  private static Geometry overlaid(List<List<Coordinate>> rims) {
    List<Geometry> links = new ArrayList<>();
    for (int i = 0; i + 1 < rims.size(); i++) {
      List<Coordinate> both = new ArrayList<>(rims.get(i));
      both.addAll(rims.get(i + 1));
      links.add(hull(both));
    }
    return union(links);
  }

  static Geometry union(Collection<Geometry> parts) {
    return parts.isEmpty() ? PAPER.createPolygon() : OverlayNGRobust.union(parts);
  }

  static Geometry union(Geometry... parts) {
    return union(List.of(parts));
  }

  static Geometry minus(Geometry a, Geometry b) {
    return OverlayNGRobust.overlay(a, b, OverlayNG.DIFFERENCE);
  }

  static Geometry both(Geometry a, Geometry b) {
    Geometry both = OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION);
    return a.getDimension() == 2 && b.getDimension() == 2 ? areas(both) : both;
  }

  @SuppressWarnings("unchecked") // the library gives a raw list, of polygons
  private static List<Geometry> polygons(Geometry mixture) {
    return PolygonExtracter.getPolygons(mixture);
  }

  /** The areas of a mixture: where areas only touch, their overlay has lines and points too. */
  private static Geometry areas(Geometry mixture) {
    return mixture instanceof Polygonal ? mixture : union(polygons(mixture));
  }

  /** Widened by {@code mm} with round corners, or narrowed where negative. */
  static Geometry widened(Geometry area, double mm) {
    return BufferOp.bufferOp(area, mm, new BufferParameters(ROUNDING));
  }

  /** Without corners nearer than {@code mm} to the line between their neighbours. */
  static Geometry simplified(Geometry area, double mm) {
    return DouglasPeuckerSimplifier.simplify(area, mm);
  }

  /** Hollows narrower than twice {@code mm} are filled. */
  static Geometry closed(Geometry area, double mm) {
    return widened(widened(area, mm), -mm);
  }

  /** Spikes narrower than twice {@code mm} are taken off. */
  static Geometry opened(Geometry area, double mm) {
    return widened(widened(area, -mm), mm);
  }

  /** What {@code upper} leaves of an area, a little more where they meet so that no seam shows. */
  static Geometry besides(Geometry area, Geometry upper) {
    return both(widened(minus(area, upper), .12), area);
  }

  /** The largest piece of an area. */
  static Geometry largest(Geometry area) {
    Geometry largest = area.getNumGeometries() == 0 ? area : area.getGeometryN(0);
    for (int i = 1; i < area.getNumGeometries(); i++) {
      Geometry piece = area.getGeometryN(i);
      largest = piece.getArea() > largest.getArea() ? piece : largest;
    }
    return largest;
  }

  /** A strip along lines, cut square at their ends. */
  static Geometry band(Geometry lines, double mm) {
    return BufferOp.bufferOp(
        DouglasPeuckerSimplifier.simplify(lines, BAND),
        mm,
        new BufferParameters(ROUNDING, BufferParameters.CAP_FLAT, BufferParameters.JOIN_ROUND, 5));
  }

  static Geometry circle(Coordinate centre, double mm) {
    return widened(PAPER.createPoint(centre), mm);
  }

  static LineString line(Coordinate... points) {
    return PAPER.createLineString(points);
  }

  static LineString line(Projection paper, List<Vec> points) {
    return PAPER.createLineString(points.stream().map(paper::at).toArray(Coordinate[]::new));
  }

  /** The part of an area's edge that lies inside {@code outline}, clear of its edge. */
  static Geometry edgeWithin(Geometry area, Geometry outline) {
    return both(area.getBoundary(), widened(outline, -.1));
  }
}
