package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * A hand as a mitten: palm and fingers in one chain of ellipses that curls, and a thumb that lies
 * beside an open hand and across a fist.
 */
final class HandShape {
  private static final double FIST = 45;
  private static final double[] LENGTH = {.020, .018, .014};
  private static final double[] WIDTH = {.024, .022, .016};
  private static final double THICK = .0095;

  private final Projection paper;
  private final Frame frame;
  private final Side side;
  private final double curl;

  HandShape(Projection paper, Skeleton skeleton, Side side) {
    this.paper = paper;
    this.frame = skeleton.limb(Limb.HAND, side);
    this.side = side;
    this.curl = Objects.requireNonNullElse(skeleton.curl().get(side), 12.0);
  }

  Part part() {
    Geometry mitten = Hulls.closed(Hulls.chain(mitten()), paper.mm(.004));
    Geometry thumb = thumb();
    Geometry outline = Hulls.closed(Hulls.union(mitten, thumb), paper.mm(.003));
    Part.Weld wrist =
        new Part.Weld(
            Part.Id.of(Kind.FOREARM, side),
            paper.at(frame.origin()),
            paper.mm(.022),
            paper.mm(.022));
    return new Part(
        Part.Id.of(Kind.HAND, side),
        Role.NEAR,
        outline,
        List.of(new Part.Region(Tone.SKIN, outline)),
        lines(mitten, thumb, outline),
        List.of(wrist),
        new Solid.Bones(List.of(frame.origin(), frame.point(0, -.06, 0))));
  }

  /** The thumb's edge, where the thumb lies on the viewer's side of the palm. */
  private List<Geometry> lines(Geometry mitten, Geometry thumb, Geometry outline) {
    Vec palm = frame.point(0, -.040, 0);
    Vec tip = thumbLine().get(1);
    if (paper.depth(tip) < paper.depth(palm) + .002) {
      return List.of();
    }
    Geometry web = Hulls.circle(paper.at(frame.point(.012, -.016, 0)), paper.mm(.016));
    return List.of(
        Hulls.minus(
            Hulls.both(thumb.getBoundary(), Hulls.widened(Hulls.both(mitten, outline), -.1)), web));
  }

  private List<List<Coordinate>> mitten() {
    List<List<Coordinate>> rims = new ArrayList<>();
    rims.add(rim(frame.point(0, 0, 0), frame.axes().z(), .0165, .013));
    rims.add(rim(frame.point(.001, -.022, 0), frame.axes().z(), .024, .013));
    Vec at = frame.point(.001, -.048, 0);
    rims.add(rim(at, frame.axes().z(), .026, .013));
    double turned = 0;
    for (int joint = 0; joint < LENGTH.length; joint++) {
      turned += Math.toRadians(curl);
      Vec along = forward(turned);
      at = at.plus(along.times(LENGTH[joint]));
      rims.add(rim(at, back(turned), WIDTH[joint], THICK));
    }
    return rims;
  }

  /** The fingers' direction after curling towards the palm by {@code angle}. */
  private Vec forward(double angle) {
    return frame.axes().apply(new Vec(0, -Math.cos(angle), -side.sign() * Math.sin(angle)));
  }

  private Vec back(double angle) {
    return frame.axes().apply(new Vec(0, -side.sign() * Math.sin(angle), Math.cos(angle)));
  }

  private List<Coordinate> rim(Vec centre, Vec thick, double width, double thickness) {
    return Hulls.disc(paper, centre, frame.axes().x().times(width), thick.times(thickness));
  }

  private List<Vec> thumbLine() {
    double palm = -side.sign();
    return curl > FIST
        ? List.of(
            frame.point(.012, -.016, palm * .004),
            frame.point(.028, -.036, palm * .014),
            frame.point(.016, -.052, palm * .028))
        : List.of(
            frame.point(.012, -.016, 0), frame.point(.030, -.036, 0), frame.point(.034, -.056, 0));
  }

  private Geometry thumb() {
    double[] radius = {.010, .0095, .008};
    List<List<Coordinate>> balls = new ArrayList<>();
    for (int i = 0; i < radius.length; i++) {
      balls.add(Hulls.ball(paper, thumbLine().get(i), radius[i]));
    }
    return Hulls.chain(balls);
  }
}
