package goniograph.figure;

import goniograph.body.MassPoint;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The body's centre of mass, a plumb line from it to the floor, and the outline of the feet. */
final class BalanceMark {
  /** A foot counts as planted where its sole is within this of the floor, in body heights. */
  private static final double PLANTED = .012;

  private final Projection paper;
  private final Skeleton skeleton;

  BalanceMark(Projection paper, Skeleton skeleton) {
    this.paper = paper;
    this.skeleton = skeleton;
  }

  List<Paint> painted(Style style, Weights weights) {
    Vec mass = MassPoint.centreOfMass(MassPoint.of(skeleton));
    Coordinate centre = paper.at(mass);
    double radius = 4 * weights.near();
    List<Paint> paints = new ArrayList<>();
    Geometry plumb = Hulls.line(centre, paper.at(new Vec(mass.x(), 0, mass.z())));
    paints.add(Paint.Line.solid(plumb, Style.PAPER, weights.near() + 2 * weights.halo()));
    paints.add(new Paint.Line(plumb, style.mark(), weights.near(), false, List.of(1.2, .8)));
    paints.add(
        new Paint.Line(
            base().getBoundary(), style.mark(), weights.near(), false, List.of(1.2, .8)));
    paints.addAll(target(centre, radius, style, weights));
    return paints;
  }

  /** A circle in quarters, two of them filled. */
  private static List<Paint> target(
      Coordinate centre, double radius, Style style, Weights weights) {
    Geometry disc = Hulls.circle(centre, radius);
    return List.of(
        new Paint.Area(disc, Style.PAPER),
        new Paint.Area(Hulls.both(disc, square(centre, -radius, -radius)), style.mark()),
        new Paint.Area(Hulls.both(disc, square(centre, radius, radius)), style.mark()),
        Paint.Line.solid(disc.getBoundary(), style.mark(), weights.near()));
  }

  private static Geometry square(Coordinate corner, double dx, double dy) {
    return Hulls.hull(
        List.of(
            corner,
            new Coordinate(corner.x + dx, corner.y),
            new Coordinate(corner.x + dx, corner.y + dy),
            new Coordinate(corner.x, corner.y + dy)));
  }

  private Geometry base() {
    List<Coordinate> points = new ArrayList<>();
    for (Side side : Side.values()) {
      List<Vec> print = FootShape.print(skeleton, side);
      if (print.stream().allMatch(point -> point.y() < PLANTED)) {
        print.forEach(point -> points.add(paper.at(new Vec(point.x(), 0, point.z()))));
      }
    }
    Geometry hull = Hulls.hull(points);
    return hull.isEmpty() ? Hulls.PAPER.createPolygon() : hull;
  }
}
