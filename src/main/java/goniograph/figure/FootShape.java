package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Toes;
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

  /** Where along the foot the toes bend; a place of the rim. */
  private static final double BALL = .070;

  private static final double GROUND = -.039;
  private static final double SOLE_TOP = -.031;

  private final Projection paper;
  private final Frame frame;
  private final Frame toes;
  private final Side side;

  FootShape(Projection paper, Skeleton skeleton, Side side) {
    this.paper = paper;
    this.frame = skeleton.limb(Limb.FOOT, side);
    this.toes = Toes.frame(skeleton, side);
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
        new Solid.Bones(List.of(frame.point(-.02, -.02, 0), toes.point(.09, -.025, 0))));
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
    List<Coordinate> toe = Hulls.ball(paper, toes.point(.094, -.0265, 0), .0125);
    return Hulls.union(
        Hulls.chain(List.of(heel, ankle, instep, ball, toe)),
        Hulls.chain(List.of(heel, instep)),
        Hulls.chain(List.of(heel, ball)));
  }

  private List<Coordinate> ball(double x, double y, double z, double radius) {
    return Hulls.ball(paper, frame.point(x, y, z), radius);
  }

  private Geometry sole() {
    return along(GROUND, SOLE_TOP);
  }

  private Geometry underside() {
    return along(GROUND);
  }

  /** The top of the sole: what lies in it is upper, not sole. */
  private Geometry raised() {
    return along(SOLE_TOP);
  }

  /** The hull of the rim at these heights; of a foot bent at the ball, its two parts' hulls. */
  private Geometry along(double... heights) {
    if (toes.equals(frame)) {
      return Hulls.hull(rim(frame, -1, 1, heights));
    }
    return Hulls.union(
        Hulls.hull(rim(frame, -1, BALL, heights)), Hulls.hull(rim(toes, BALL, 1, heights)));
  }

  /** The rim from one place along the foot to another. */
  private List<Coordinate> rim(Frame part, double from, double to, double... heights) {
    List<Coordinate> rim = new ArrayList<>();
    for (double y : heights) {
      for (double[] point : PRINT) {
        if (point[0] >= from && point[0] <= to) {
          rim.add(paper.at(part.point(point[0], y, point[1])));
          rim.add(paper.at(part.point(point[0], y, -point[1])));
        }
      }
    }
    return rim;
  }

  /** The sole's rim on the ground, for the shape of a footprint. */
  static List<Vec> print(Skeleton skeleton, Side side) {
    Frame foot = skeleton.limb(Limb.FOOT, side);
    Frame toes = Toes.frame(skeleton, side);
    List<Vec> rim = new ArrayList<>();
    for (double[] point : PRINT) {
      Frame part = point[0] > BALL ? toes : foot;
      rim.add(part.point(point[0], GROUND, point[1]));
      rim.add(part.point(point[0], GROUND, -point[1]));
    }
    return rim;
  }
}
