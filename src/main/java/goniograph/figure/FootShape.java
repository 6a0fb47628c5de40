package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** A foot in a flat shoe: balls from heel to toe on a flat sole. */
final class FootShape {
  /** The sole's rim, from the heel round: forward and outward, in body heights. */
  private static final double[][] PRINT = {
    {-.041, 0},
    {-.036, .014},
    {-.022, .019},
    {.010, .019},
    {.045, .024},
    {.070, .027},
    {.092, .022},
    {.104, .012},
    {.108, 0}
  };

  private static final double GROUND = -.039;
  private static final double SOLE_TOP = -.031;

  private final Projection paper;
  private final Frame frame;
  private final Side side;

  FootShape(Projection paper, Skeleton skeleton, Side side) {
    this.paper = paper;
    this.frame = skeleton.limb(Limb.FOOT, side);
    this.side = side;
  }

  Part part() {
    Geometry sole = sole();
    Geometry upper = Hulls.closed(upper(), paper.mm(.006));
    Geometry outline = Hulls.closed(Hulls.union(upper, sole), paper.mm(.006));
    List<Part.Region> regions = new ArrayList<>();
    regions.add(new Part.Region(Tone.SHOE, outline));
    List<Geometry> inner = new ArrayList<>();
    if (soleShows()) {
      Geometry seen = fromBelow() ? underside() : Hulls.minus(sole, raised());
      regions.add(new Part.Region(Tone.SOLE, Hulls.both(seen, outline)));
      inner.add(Hulls.edgeWithin(seen, outline));
    }
    return new Part(
        Part.Id.of(Kind.FOOT, side),
        Role.NEAR,
        outline,
        regions,
        inner,
        List.of(
            new Part.Weld(
                Part.Id.of(Kind.SHANK, side),
                paper.at(frame.origin()),
                paper.mm(.012),
                paper.mm(.05))),
        new Solid.Bones(List.of(frame.point(-.02, -.02, 0), frame.point(.09, -.025, 0))));
  }

  private double facingUp() {
    return paper.facing(frame.axes().y());
  }

  private boolean fromBelow() {
    return facingUp() < -.32;
  }

  private boolean soleShows() {
    return facingUp() < .32;
  }

  private Geometry upper() {
    List<Coordinate> heel = ball(-.022, -.020, 0, .019);
    List<Coordinate> ankle = ball(0, -.002, 0, .0225);
    List<Coordinate> instep = ball(.030, -.0165, 0, .0205);
    List<Coordinate> ball = new ArrayList<>(ball(.065, -.023, -.010, .016));
    ball.addAll(ball(.065, -.023, .010, .016));
    List<Coordinate> toe = ball(.094, -.0265, 0, .0125);
    return Hulls.union(
        Hulls.chain(List.of(heel, ankle, instep, ball, toe)),
        Hulls.chain(List.of(heel, instep)),
        Hulls.chain(List.of(heel, ball)));
  }

  private List<Coordinate> ball(double x, double y, double z, double radius) {
    return Hulls.ball(paper, frame.point(x, y, z), radius);
  }

  private Geometry sole() {
    List<Coordinate> rim = rim(GROUND);
    rim.addAll(rim(SOLE_TOP));
    return Hulls.hull(rim);
  }

  private Geometry underside() {
    return Hulls.hull(rim(GROUND));
  }

  /** The top of the sole: what lies in it is upper, not sole. */
  private Geometry raised() {
    return Hulls.hull(rim(SOLE_TOP));
  }

  private List<Coordinate> rim(double y) {
    List<Coordinate> rim = new ArrayList<>();
    for (double[] point : PRINT) {
      rim.add(paper.at(frame.point(point[0], y, point[1])));
      rim.add(paper.at(frame.point(point[0], y, -point[1])));
    }
    return rim;
  }

  /** The sole's rim on the ground, for the shape of a footprint. */
  static List<Vec> print(Skeleton skeleton, Side side) {
    Frame foot = skeleton.limb(Limb.FOOT, side);
    List<Vec> rim = new ArrayList<>();
    for (double[] point : PRINT) {
      rim.add(foot.point(point[0], GROUND, point[1]));
      rim.add(foot.point(point[0], GROUND, -point[1]));
    }
    return rim;
  }
}
