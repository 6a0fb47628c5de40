package goniograph.figure;

import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** A wheel: a dark tyre and hub, open between them, so that the body behind can be seen. */
final class WheelShape {
  private static final double TYRE = .008;
  private static final double HALF_WIDTH = .006;
  private static final double LARGE = .1;

  private final Projection paper;
  private final Wheelchair.Wheel wheel;

  WheelShape(Projection paper, Wheelchair.Wheel wheel) {
    this.paper = paper;
    this.wheel = wheel;
  }

  Part part(int group, int number) {
    Geometry tyre = Hulls.minus(rims(1), hole());
    Geometry outline = Hulls.union(tyre, rims(wheel.radius() > LARGE ? .09 : .4));
    return new Part(
        new Part.Id(Kind.WHEEL, Optional.empty(), number),
        Role.SUPPORT,
        outline,
        List.of(new Part.Region(Tone.SOLE, outline)),
        List.of(),
        List.of(),
        new Solid.Bones(List.of(wheel.centre(), wheel.centre())),
        Optional.of(group));
  }

  private Geometry hole() {
    return Hulls.both(disc(-1, wheel.radius() - TYRE), disc(1, wheel.radius() - TYRE));
  }

  /** The hull of both rims, at a share of the wheel's radius. */
  private Geometry rims(double share) {
    double radius = share * wheel.radius();
    return Hulls.chain(List.of(rim(-1, radius), rim(1, radius)));
  }

  private Geometry disc(int side, double radius) {
    return Hulls.hull(rim(side, radius));
  }

  private List<Coordinate> rim(int side, double radius) {
    Vec middle = wheel.centre().plus(new Vec(0, 0, side * HALF_WIDTH));
    return Hulls.disc(paper, middle, new Vec(radius, 0, 0), new Vec(0, radius, 0));
  }
}
