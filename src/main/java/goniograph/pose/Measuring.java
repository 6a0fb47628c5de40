package goniograph.pose;

import goniograph.body.BearingPatch;
import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;

/** Measures on the solved body how well its contacts are kept, apart from how they were solved. */
final class Measuring {
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
        .map(c -> new ContactMiss(c, pose.body().cm(gap(s, c)), pose.body().cm(slip(s, c))))
        .toList();
  }

  private double gap(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    if (contact.otherHand().isPresent()) {
      Frame other = s.limb(Limb.HAND, contact.otherHand().get());
      double along = -other.axes().invert(Landmarks.palm(s, side).minus(other.origin())).y();
      Vec under = other.point(0, -Math.max(0, Math.min(Lengths.PALM, along)), 0);
      return Math.abs(Landmarks.palm(s, side).minus(under).length() - Hands.ON_HAND);
    }
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
    if (contact.thigh().isPresent()) {
      Frame thigh = s.limb(Limb.THIGH, contact.thigh().get());
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
