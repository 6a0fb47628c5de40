package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.Optional;

/**
 * A goniometer laid on a joint: its axis, its stationary arm along the neutral direction and its
 * moving arm.
 *
 * @param apex the joint centre
 * @param neutral unit vector of the stationary arm
 * @param moving unit vector of the moving arm
 * @param radius of the arc, in body heights
 * @param bare how much of the arms is left out next to the joint, where they would cross the face
 * @param signed true where the angle is counted from the horizontal, down being negative
 */
public record Goniometer(
    Vec apex, Vec neutral, Vec moving, double radius, double bare, boolean signed) {
  /** A sole nearer to level than this stands on the ground; the cosine of 3 degrees. */
  private static final double FLAT = .9986;

  /** The goniometer for a pose file's joint word. */
  public static Optional<Goniometer> at(Skeleton s, String joint, Side side) {
    return switch (joint) {
      case "hip" -> limb(s, Limb.THIGH, side, down(s.pelvis()), .17);
      case "knee" -> limb(s, Limb.SHANK, side, down(s.limb(Limb.THIGH, side)), .13);
      case "elbow" -> limb(s, Limb.FOREARM, side, down(s.limb(Limb.UPPER_ARM, side)), .12);
      case "shoulder" -> limb(s, Limb.UPPER_ARM, side, down(s.spine(SpineJoint.T5)), .16);
      case "ankle" -> ankle(s, side);
      case "rotation" -> rotation(s, side);
      case "wrist" -> limb(s, Limb.HAND, side, down(s.limb(Limb.FOREARM, side)), .10);
      case "pelvis" -> trunk(s.pelvis(), Vec.UP, s.pelvis());
      case "lumbar" -> trunk(s.spine(SpineJoint.L3), s.pelvis().axes().y(), s.spine(SpineJoint.L1));
      case "thoracic" ->
          trunk(s.spine(SpineJoint.T8), s.spine(SpineJoint.L1).axes().y(), s.spine(SpineJoint.T2));
      case "neck", "head" -> neck(s);
      case "cva" -> craniovertebral(s);
      default -> Optional.empty();
    };
  }

  private static Vec down(Frame frame) {
    return frame.axes().y().times(-1);
  }

  private static Optional<Goniometer> limb(
      Skeleton s, Limb limb, Side side, Vec neutral, double radius) {
    Frame frame = s.limb(limb, side);
    return Optional.of(new Goniometer(frame.origin(), neutral, down(frame), radius, 0, false));
  }

  private static Optional<Goniometer> trunk(Frame apex, Vec neutral, Frame moving) {
    return Optional.of(new Goniometer(apex.origin(), neutral, moving.axes().y(), .24, 0, false));
  }

  /**
   * On the ground the shank against the vertical, as a calf stretch is measured; else the foot
   * against where it points at a right angle to the shank.
   */
  private static Optional<Goniometer> ankle(Skeleton s, Side side) {
    Turn foot = s.limb(Limb.FOOT, side).axes();
    Turn shank = s.limb(Limb.SHANK, side).axes();
    Vec apex = Landmarks.ankle(s, side);
    return Optional.of(
        foot.y().dot(Vec.UP) > FLAT
            ? new Goniometer(apex, Vec.UP, shank.y(), .14, 0, false)
            : new Goniometer(apex, shank.x(), foot.x(), .14, 0, false));
  }

  /** The forearm against straight ahead, about the upper arm. */
  private static Optional<Goniometer> rotation(Skeleton s, Side side) {
    Vec axis = s.limb(Limb.UPPER_ARM, side).axes().y();
    Vec ahead = across(s.spine(SpineJoint.T5).axes().x(), axis);
    Vec forearm = across(down(s.limb(Limb.FOREARM, side)), axis);
    return Optional.of(new Goniometer(Landmarks.elbow(s, side), ahead, forearm, .15, 0, false));
  }

  private static Vec across(Vec direction, Vec axis) {
    return direction.minus(axis.times(axis.dot(direction))).unit();
  }

  private static Optional<Goniometer> neck(Skeleton s) {
    Vec apex = s.spine(SpineJoint.C7).origin();
    Vec trunk = s.spine(SpineJoint.T2).axes().y();
    Vec head = s.spine(SpineJoint.C0).axes().y();
    return Optional.of(new Goniometer(apex, trunk, head, .24, .72, false));
  }

  private static Optional<Goniometer> craniovertebral(Skeleton s) {
    Vec apex = Landmarks.c7Skin(s);
    Vec ahead = Vec.UP.cross(s.spine(SpineJoint.T2).axes().z()).unit();
    Vec ear = Landmarks.ears(s).minus(apex).unit();
    return Optional.of(new Goniometer(apex, ahead, ear, .16, .72, true));
  }

  /** The angle between the arms in space, degrees. */
  public double degrees() {
    double size = Math.toDegrees(Math.atan2(neutral.cross(moving).length(), neutral.dot(moving)));
    return signed && moving.y() < 0 ? -size : size;
  }

  /** A point of the arc: {@code part} 0 on the stationary arm, 1 on the moving arm. */
  public Vec onArc(double part, double reach) {
    double t = Math.toRadians(Math.abs(degrees())) * part;
    Vec q = moving.minus(neutral.times(neutral.dot(moving))).unit();
    return apex.plus(neutral.times(Math.cos(t)).plus(q.times(Math.sin(t))).times(radius * reach));
  }

  /** How squarely the angle's plane is seen: 1 in full, 0 edge on. */
  public double seen(Vec toViewer) {
    return Math.abs(toViewer.dot(neutral.cross(moving).unit()));
  }
}
