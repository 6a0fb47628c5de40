package goniograph.pose;

import goniograph.body.Body;
import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.TrunkSection;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.Arrays;
import java.util.List;

/**
 * Where one thing is held at one moment.
 *
 * @param body whose height turns cm into the scene's lengths
 * @param centre its middle
 * @param axes X along its length, Y through its thickness
 * @param gap the room it has through its thickness; 0 where it is free
 * @param span the length from hand to hand, or of what it lies along; 0 where it is free
 */
record Hold(Body body, Vec centre, Turn axes, double gap, double span) {
  /** Half a thing's thickness in a fist. */
  private static final double GRIP = .016;

  /** A length in cm in the scene's measure. */
  double f(double cm) {
    return body.fraction(cm);
  }

  Frame frame() {
    return new Frame(centre, axes);
  }

  /** Everywhere a wish puts its thing: once, or once in each hand. */
  static List<Hold> of(Holding h, ThingWish wish) {
    Skeleton s = h.now();
    return switch (wish.place()) {
      case HANDS -> inHands(h, wish);
      case ON_FLOOR -> h.hands().stream().map(side -> toFloor(s, side)).toList();
      case ALONG_BACK -> List.of(alongBack(s));
      case BETWEEN_KNEES -> List.of(between(s, Limb.THIGH, .86, .036));
      case BETWEEN_ANKLES -> List.of(between(s, Limb.SHANK, .86, .024));
      case UNDER_HEAD -> List.of(below(h, Landmarks.head(s), Lengths.SKULL.z()));
      case UNDER_KNEES ->
          List.of(below(h, knee(s, Side.LEFT).towards(knee(s, Side.RIGHT), .5), .034));
      case UNDER_RIGHT_KNEE -> List.of(below(h, knee(s, Side.RIGHT), .034));
      case UNDER_LEFT_KNEE -> List.of(below(h, knee(s, Side.LEFT), .034));
      case UNDER_RIGHT_ARM -> List.of(underArm(s, Side.RIGHT));
      case UNDER_LEFT_ARM -> List.of(underArm(s, Side.LEFT));
    };
  }

  private static List<Hold> inHands(Holding h, ThingWish wish) {
    if (h.hands().size() == 2 && !wish.kind().single()) {
      return List.of(betweenHands(h.now()));
    }
    return h.hands().stream().map(side -> inHand(h.now(), side, GRIP)).toList();
  }

  /** In a fist, across the palm: X to the thumb, Y away from the palm. */
  private static Hold inHand(Skeleton s, Side side, double off) {
    Frame hand = s.limb(Limb.HAND, side);
    Vec palmar = hand.axes().z().times(-side.sign());
    Vec centre = hand.point(0, -Lengths.PALM, 0).plus(palmar.times(off));
    Turn axes = turn(hand.axes().x(), palmar);
    return new Hold(s.body(), centre, axes, 0, 0);
  }

  private static Hold betweenHands(Skeleton s) {
    Vec left = inHand(s, Side.LEFT, GRIP).centre;
    Vec right = inHand(s, Side.RIGHT, GRIP).centre;
    double palms = Landmarks.palm(s, Side.LEFT).minus(Landmarks.palm(s, Side.RIGHT)).length();
    Vec along = right.minus(left);
    return new Hold(
        s.body(),
        left.towards(right, .5),
        turn(along, Vec.UP),
        palms - 2 * Hands.HALF_PALM,
        along.length());
  }

  private static Hold toFloor(Skeleton s, Side side) {
    Vec top = inHand(s, side, GRIP).centre.plus(Vec.UP.times(.012));
    Vec foot = new Vec(top.x() + .02, 0, top.z() + side.sign() * .03);
    return new Hold(
        s.body(),
        top.towards(foot, .5),
        turn(top.minus(foot), Vec.UP),
        0,
        top.minus(foot).length());
  }

  /** Along the two points of the back that stand out farthest: at the sacrum and at the chest. */
  private static Hold alongBack(Skeleton s) {
    Vec out = s.spine(SpineJoint.T8).axes().x().times(-1);
    Vec low = s.pelvis().point(-.084, .03, 0);
    Vec high = TrunkSection.at(SpineJoint.T5).farthest(s, out);
    Vec way = high.minus(low).unit();
    Vec off = s.pelvis().axes().z().cross(way).unit().times(-.008);
    Vec middle = low.plus(way.times(.21)).plus(off.dot(out) < 0 ? off.times(-1) : off);
    return new Hold(s.body(), middle, turn(way, out), 0, .60);
  }

  /** Between both legs: X along them, Y from the left to the right. */
  private static Hold between(Skeleton s, Limb limb, double part, double radius) {
    List<Vec> at =
        Arrays.stream(Side.values())
            .map(side -> s.limb(limb, side).point(0, -part * Lengths.of(limb), 0))
            .toList();
    Vec across = at.get(1).minus(at.get(0));
    Vec along = s.limb(limb, Side.RIGHT).axes().y().plus(s.limb(limb, Side.LEFT).axes().y());
    Vec middle = at.get(0).towards(at.get(1), .5);
    return new Hold(
        s.body(), middle, across(along, across), Math.max(0, across.length() - 2 * radius), 0);
  }

  /** Between a part and what is below it: X across the body, Y up. */
  private static Hold below(Holding h, Vec part, double radius) {
    double floor = h.room().heightBelow(part);
    double gap = Math.max(h.f(2), part.y() - radius - floor);
    Vec centre = new Vec(part.x(), floor + gap / 2, part.z());
    Vec side = h.now().pelvis().axes().z();
    Vec level = new Vec(side.x(), 0, side.z());
    Vec along = level.length() > .5 ? level : new Vec(0, 0, 1);
    return new Hold(h.body(), centre, turn(along, Vec.UP), gap, 0);
  }

  /** Between the lower part of an upper arm and the ribs. */
  private static Hold underArm(Skeleton s, Side side) {
    Frame arm = s.limb(Limb.UPPER_ARM, side);
    Vec inward = s.spine(SpineJoint.T8).axes().z().times(-side.sign());
    Vec at = arm.point(.010, -Lengths.UPPER_ARM, 0).plus(inward.times(.042));
    return new Hold(s.body(), at, turn(arm.axes().x(), inward), .030, 0);
  }

  private static Vec knee(Skeleton s, Side side) {
    return Landmarks.knee(s, side);
  }

  /** Axes with X along a direction and Y as near as can be to another. */
  private static Turn turn(Vec along, Vec thick) {
    Vec x = along.unit();
    Vec other = Math.abs(x.dot(thick.unit())) > .95 ? new Vec(0, 0, 1) : thick;
    Vec y = other.minus(x.times(other.dot(x))).unit();
    return new Turn(x, y, x.cross(y));
  }

  /** Axes with Y along a direction and X as near as can be to another. */
  private static Turn across(Vec along, Vec thick) {
    Vec y = thick.length() < 1e-9 ? new Vec(0, 0, 1) : thick.unit();
    Vec x = along.minus(y.times(along.dot(y))).unit();
    return new Turn(x, y, x.cross(y));
  }
}
