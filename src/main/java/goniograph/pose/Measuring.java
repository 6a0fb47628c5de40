package goniograph.pose;

import goniograph.body.BearingPatch;
import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Measures on the solved body how well its contacts are kept, apart from how they were solved. */
final class Measuring {
  private static final Vec DOWN = new Vec(0, -1, 0);
  private static final List<TrunkSection> ABOVE_PELVIS =
      TrunkSection.ALL.stream().filter(section -> section.joint().isPresent()).toList();

  private final PoseFile pose;
  private final Touch touch;
  private final Pins pins;

  Measuring(PoseFile pose, Touch touch, Pins pins) {
    this.pose = pose;
    this.touch = touch;
    this.pins = pins;
  }

  /** Every contact with its miss; held things are never missed. */
  List<ContactMiss> misses(Skeleton s, List<Contact> contacts) {
    return contacts.stream()
        .filter(c -> c.manner() != Contact.Manner.HOLDING)
        .map(c -> new ContactMiss(c, pose.body().cm(miss(s, c))))
        .toList();
  }

  private double miss(Skeleton s, Contact contact) {
    return Math.max(gap(s, contact), slip(s, contact));
  }

  private double gap(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    if (contact.otherFoot().isPresent()) {
      Vec other = Landmarks.ankle(s, contact.otherFoot().get());
      return Math.abs(Landmarks.ankle(s, side).minus(other).length() - Feet.STACKED);
    }
    Optional<Surface> face = touch.face(s, contact);
    return face.map(f -> gap(s, contact, side, f)).orElse(0.0);
  }

  private double gap(Skeleton s, Contact contact, Side side, Surface face) {
    return switch (contact.part()) {
      case FOOT, HEEL, TOES -> foot(s, contact, side, face);
      case HAND, FINGERTIPS -> hand(s, side, contact, face);
      case FOREARM ->
          Math.max(
              off(Landmarks.elbow(s, side), face, Touch.ELBOW),
              off(Landmarks.wrist(s, side), face, Touch.WRIST));
      case ELBOW -> off(Landmarks.elbow(s, side), face, Touch.ELBOW);
      default -> Math.abs(Touch.gap(s, contact, face));
    };
  }

  /** How far a point is from where it is so far out of a face, beyond its edges too. */
  private static double off(Vec point, Surface face, double radius) {
    double out = Math.abs(Touch.out(face, point) - radius);
    Vec foot = Touch.foot(face, point);
    return Math.max(out, foot.minus(Touch.place(face, foot, 0)).length());
  }

  /** A kneeling foot touches with what is lowest; else the sole, the heel or the ball does. */
  private static double foot(Skeleton s, Contact contact, Side side, Surface face) {
    return switch (contact.part()) {
      case HEEL -> Math.abs(Touch.out(face, LegSolver.heelPoint(s, side)));
      case TOES ->
          Math.min(
              Math.abs(Touch.out(face, LegSolver.toesPoint(s, side))),
              Math.abs(Clearance.lowestOfFoot(s, side) - face.high().y()));
      default -> farthest(BearingPatch.sole(s, side), face);
    };
  }

  private static double farthest(List<Vec> points, Surface face) {
    return points.stream().mapToDouble(p -> Math.abs(Touch.out(face, p))).max().orElse(0);
  }

  private static double hand(Skeleton s, Side side, Contact contact, Surface face) {
    Vec palm = Landmarks.palm(s, side);
    if (contact.target().equals(Contact.THIGHS)) {
      Frame thigh = s.limb(Limb.THIGH, side);
      double along = -thigh.axes().invert(palm.minus(thigh.origin())).y();
      Vec axis = thigh.point(0, -Math.max(0, Math.min(Lengths.THIGH, along)), 0);
      return Math.abs(palm.minus(axis).length() - Hands.THIGH_HEIGHT);
    }
    boolean tips = contact.part() == Part.FINGERTIPS;
    Vec point = tips ? Landmarks.fingertip(s, side) : palm;
    double gap = point.minus(face.nearest(point, 0)).length();
    return Math.abs(gap - (tips ? 0 : Hands.HALF_PALM));
  }

  /** How far the farthest planted foot is, over the ground, from where it was planted; in cm. */
  double slipCm(Skeleton s, List<Contact> contacts) {
    return contacts.stream().mapToDouble(c -> pose.body().cm(slip(s, c))).max().orElse(0);
  }

  private double slip(Skeleton s, Contact c) {
    boolean planted = c.part().ofFoot() && c.manner() != Contact.Manner.SLIDES_ON;
    return planted && c.otherFoot().isEmpty()
        ? pins.find(c).map(pin -> level(Touch.anchor(s, c).minus(pin.point()))).orElse(0.0)
        : 0;
  }

  private static double level(Vec v) {
    return Math.hypot(v.x(), v.z());
  }

  /** A part and how deep it lies below the floor, in cm. */
  record Depth(String part, double cm) {}

  /** The part that lies deepest below the floor; its depth is 0 where none does. */
  Depth deepest(Skeleton s) {
    double hips = touch.ground(s.pelvis().origin());
    double chest = touch.ground(s.spine(SpineJoint.T5).origin());
    Stream<Depth> trunk =
        Stream.of(
            new Depth("hips", hips + Outline.hips(s, DOWN) - Outline.COMPRESSION),
            new Depth("trunk", chest + trunk(s)),
            new Depth("head", touch.ground(Landmarks.head(s)) + Touch.head(s, DOWN)));
    Clearance clearance = new Clearance(touch);
    Stream<Depth> limbs =
        Stream.of(Side.values())
            .flatMap(
                side ->
                    Stream.of(
                        new Depth("hand", clearance.handDepth(s, side)),
                        new Depth("elbow", clearance.elbowDepth(s, side)),
                        new Depth("knee", knee(clearance, s, side)),
                        new Depth("foot", clearance.footDepth(s, side))));
    return Stream.concat(trunk, limbs)
        .map(depth -> new Depth(depth.part, pose.body().cm(depth.cm)))
        .filter(depth -> depth.cm > .01)
        .reduce(new Depth("", 0), (a, b) -> b.cm > a.cm ? b : a);
  }

  private static double trunk(Skeleton s) {
    return Outline.trunk(s, DOWN, ABOVE_PELVIS) - Outline.COMPRESSION;
  }

  private static double knee(Clearance clearance, Skeleton s, Side side) {
    return clearance.depth(Landmarks.knee(s, side), Lengths.KNEELING_KNEE);
  }

  /** How a foot stands over what is below it. */
  FootState foot(Skeleton s, Side side, List<Contact> contacts) {
    double below =
        contacts.stream()
            .filter(c -> c.part().ofFoot() && c.side().filter(side::equals).isPresent())
            .flatMap(c -> touch.face(c).stream())
            .mapToDouble(face -> face.high().y())
            .findFirst()
            .orElse(0);
    double heel = pose.body().cm(LegSolver.heelPoint(s, side).y() - below);
    double ball = pose.body().cm(LegSolver.ballPoint(s, side).y() - below);
    if (Math.min(heel, ball) > 1) {
      return FootState.OFF;
    }
    if (heel > 1) {
      return FootState.HEEL_RAISED;
    }
    return ball > 1 ? FootState.FOREFOOT_RAISED : FootState.FLAT;
  }
}
