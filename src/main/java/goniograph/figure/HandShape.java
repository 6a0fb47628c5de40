package goniograph.figure;

import goniograph.body.Finger;
import goniograph.body.Fingers;
import goniograph.body.Frame;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Thumb;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * A hand: palm, four fingers of three parts, thumb. Where a finger is wide enough on paper for
 * lines beside each other every part has its own; on a small drawing the thumb and the index stand
 * out from the rest.
 */
final class HandShape {
  /** A finger this wide on paper, mm, has lines of its own. */
  private static final double FINE = 1.15;

  /** Bent less than this, degrees, two parts of a finger are one piece. */
  private static final double BENT = 30;

  private static final double[] FINGER = {.0068, .0064, .0060, .0050};
  private static final double[] THUMB = {.0100, .0092, .0078, .0056};
  private static final double SLIM = .88;
  private static final double KNUCKLE = .0088;

  private final Projection paper;
  private final Skeleton skeleton;
  private final Frame frame;
  private final Side side;
  private final List<Folds.Piece> pieces = new ArrayList<>();

  HandShape(Projection paper, Skeleton skeleton, Side side) {
    this.paper = paper;
    this.skeleton = skeleton;
    this.frame = skeleton.limb(Limb.HAND, side);
    this.side = side;
  }

  /** True where fingers are drawn one by one at this scale. */
  static boolean fine(Projection paper) {
    return paper.mm(2 * FINGER[1]) >= FINE;
  }

  Part part() {
    if (fine(paper)) {
      everyPart();
    } else {
      indexAndThumb();
    }
    List<Geometry> areas = pieces.stream().map(Folds.Piece::area).toList();
    Geometry outline = Hulls.closed(Hulls.union(areas), paper.mm(fine(paper) ? .0015 : .003));
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
        List.of(new Folds(pieces).within(outline)),
        List.of(wrist),
        new Solid.Bones(List.of(frame.origin(), frame.point(0, -.06, 0))));
  }

  private void everyPart() {
    piece(palm(), frame.point(0, -.030, 0), frame.origin(), 0, 0);
    for (Finger finger : Finger.values()) {
      folded(finger);
    }
    thumb();
  }

  /** A finger in straight pieces, one from each sharp bend to the next. */
  private void folded(Finger finger) {
    Fingers bent = skeleton.fingers(side);
    double[] bends = {bent.knuckles(), bent.middle(), bent.ends(), 180};
    int from = 0;
    for (int to = 1; to < bends.length; to++) {
      if (bends[to] >= BENT) {
        straight(finger, from, to);
        from = to;
      }
    }
  }

  private void straight(Finger finger, int from, int to) {
    List<Vec> joints = finger.joints(skeleton, side);
    List<Geometry> links = new ArrayList<>();
    for (int i = from; i < to; i++) {
      links.add(link(finger, joints, i));
    }
    Vec middle = joints.get(from).towards(joints.get(to), .5);
    boolean atPalm = from == 0;
    piece(
        Hulls.union(links),
        middle,
        joints.get(from),
        atPalm ? .014 : .010,
        atPalm ? 0 : pieces.size() - 1);
  }

  private void indexAndThumb() {
    List<Geometry> rest = new ArrayList<>(List.of(palm()));
    for (Finger finger : Finger.values()) {
      if (finger != Finger.INDEX) {
        rest.add(finger(finger));
      }
    }
    piece(Hulls.union(rest), frame.point(0, -.045, 0), frame.origin(), 0, 0);
    List<Vec> index = Finger.INDEX.joints(skeleton, side);
    piece(finger(Finger.INDEX), index.get(1), index.get(0), .022, 0);
    thumb();
  }

  private void thumb() {
    List<Vec> joints = Thumb.joints(skeleton, side);
    List<List<Coordinate>> balls = new ArrayList<>();
    for (int i = 0; i < THUMB.length; i++) {
      balls.add(Hulls.ball(paper, joints.get(i), THUMB[i]));
    }
    Vec middle = joints.get(2).towards(joints.get(3), .4);
    piece(Hulls.chain(balls), middle, joints.get(0).towards(joints.get(1), .3), .017, 0);
  }

  private void piece(Geometry area, Vec middle, Vec joint, double melts, int before) {
    pieces.add(
        new Folds.Piece(area, paper.depth(middle), paper.at(joint), paper.mm(melts), before));
  }

  private Geometry finger(Finger finger) {
    List<Vec> joints = finger.joints(skeleton, side);
    return Hulls.union(link(finger, joints, 0), link(finger, joints, 1), link(finger, joints, 2));
  }

  /** A part of a finger, from joint {@code i} to the next. */
  private Geometry link(Finger finger, List<Vec> joints, int i) {
    double slim = finger == Finger.LITTLE ? SLIM : 1;
    return Hulls.chain(
        List.of(
            Hulls.ball(paper, joints.get(i), slim * FINGER[i]),
            Hulls.ball(paper, joints.get(i + 1), slim * FINGER[i + 1])));
  }

  private Geometry palm() {
    List<Coordinate> knuckles = new ArrayList<>();
    for (Finger finger : Finger.values()) {
      knuckles.addAll(Hulls.ball(paper, finger.joints(skeleton, side).get(0), KNUCKLE));
    }
    return Hulls.chain(List.of(rim(0, 0, .0165, .0125), rim(.001, -.020, .0225, .0130), knuckles));
  }

  private List<Coordinate> rim(double x, double y, double width, double thickness) {
    return Hulls.disc(
        paper,
        frame.point(x, y, 0),
        frame.axes().x().times(width),
        frame.axes().z().times(thickness));
  }
}
