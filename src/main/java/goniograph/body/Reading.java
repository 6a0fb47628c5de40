package goniograph.body;

import static goniograph.body.Movement.ABDUCTION;
import static goniograph.body.Movement.BEND;
import static goniograph.body.Movement.DORSIFLEXION;
import static goniograph.body.Movement.FLEXION;
import static goniograph.body.Movement.PRONATION;
import static goniograph.body.Movement.PROTRACTION;
import static goniograph.body.Movement.RADIAL;
import static goniograph.body.Movement.RAISE;
import static goniograph.body.Movement.ROTATION;
import static goniograph.body.Movement.TILT;
import static goniograph.body.Movement.TURN;

import java.util.EnumMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Joint angles read from a skeleton: the inverse of {@link Kinematics}. What is printed and checked
 * is read here, whatever an author typed.
 *
 * <p>A tucked or poked chin is read as the neck and head angles it is made of. An arm direction
 * that two pairs of flexion and abduction describe is read as the pair with the smaller sum.
 */
public final class Reading {
  private final Skeleton skeleton;
  private final SortedMap<Freedom, Double> values = new TreeMap<>();

  private Reading(Skeleton skeleton) {
    this.skeleton = skeleton;
  }

  /** Every angle of a skeleton; the pelvis is read against its base posture. */
  public static JointAngles of(Skeleton skeleton, Turn base) {
    Reading reading = new Reading(skeleton);
    reading.pelvis(base);
    reading.spine();
    for (Side side : Side.values()) {
      reading.arm(side);
      reading.leg(side);
    }
    return new JointAngles(reading.values);
  }

  private void put(Joint joint, Movement movement, double value) {
    values.put(Freedom.of(joint, movement), value);
  }

  private void put(Joint joint, Side side, Movement movement, double value) {
    values.put(Freedom.of(joint, side, movement), value);
  }

  private static Turn between(Frame parent, Frame child) {
    return parent.axes().inverse().then(child.axes());
  }

  private void pelvis(Turn base) {
    Euler euler = Euler.zxy(base.inverse().then(skeleton.pelvis().axes()));
    put(Joint.PELVIS, TILT, -euler.z());
    put(Joint.PELVIS, BEND, euler.x());
    put(Joint.PELVIS, TURN, -euler.y());
  }

  private void spine() {
    Map<Joint, TrunkAngles> sums = new EnumMap<>(Joint.class);
    Frame below = skeleton.pelvis();
    for (SpineJoint joint : SpineJoint.values()) {
      Frame above = skeleton.spine(joint);
      Euler e = Euler.zxy(between(below, above));
      sums.merge(joint.region(), new TrunkAngles(-e.z(), e.x(), -e.y()), TrunkAngles::plus);
      below = above;
    }
    sums.forEach(
        (region, sum) -> {
          put(region, FLEXION, sum.flexion());
          put(region, BEND, sum.bend());
          put(region, TURN, sum.turn());
        });
  }

  private void arm(Side side) {
    Frame upper = skeleton.limb(Limb.UPPER_ARM, side);
    Frame fore = skeleton.limb(Limb.FOREARM, side);
    shoulder(side, skeleton.spine(SpineJoint.T2), upper);
    Euler elbow = Euler.zxy(between(upper, fore));
    put(Joint.ELBOW, side, FLEXION, elbow.z());
    put(Joint.FOREARM, side, PRONATION, side.sign() * elbow.y());
    Euler wrist = Euler.xzy(between(fore, skeleton.limb(Limb.HAND, side)));
    put(Joint.WRIST, side, FLEXION, side.sign() * wrist.x());
    put(Joint.WRIST, side, RADIAL, wrist.z());
    fingers(side, skeleton.fingers(side));
  }

  private void fingers(Side side, Fingers bent) {
    put(Joint.HAND, side, Movement.KNUCKLES, bent.knuckles());
    put(Joint.HAND, side, Movement.MIDDLE, bent.middle());
    put(Joint.HAND, side, Movement.ENDS, bent.ends());
    put(Joint.HAND, side, Movement.THUMB, bent.thumb());
  }

  private void shoulder(Side side, Frame chest, Frame upper) {
    int sg = side.sign();
    Turn arm = between(chest, upper);
    Vec direction = arm.y().times(-1);
    ShoulderRhythm rhythm = ShoulderRhythm.ofDirection(direction, sg);
    Turn twist = rhythm.swing(sg).inverse().then(arm);
    double turned = Math.toDegrees(Math.atan2(twist.z().x(), twist.z().z()));
    put(Joint.SHOULDER, side, ROTATION, wrapped(-sg * turned - rhythm.automatic()));
    flexionAndAbduction(side, direction);
    Vec place = chest.axes().invert(upper.origin().minus(chest.origin()));
    Vec moved = place.minus(Kinematics.shoulder(rhythm, sg));
    put(Joint.SHOULDER, side, RAISE, skeleton.body().cm(moved.y()));
    put(Joint.SHOULDER, side, PROTRACTION, skeleton.body().cm(moved.x()));
  }

  private void flexionAndAbduction(Side side, Vec d) {
    double sideways = Math.max(-1, Math.min(1, side.sign() * d.z()));
    double flexion = Math.toDegrees(Math.atan2(d.x(), -d.y()));
    double abduction = Math.toDegrees(Math.asin(sideways));
    double otherFlexion = wrapped(flexion + 180);
    double otherAbduction = wrapped(180 - abduction);
    boolean other =
        Math.abs(otherFlexion) + Math.abs(otherAbduction) < Math.abs(flexion) + Math.abs(abduction);
    put(Joint.SHOULDER, side, FLEXION, other ? otherFlexion : flexion);
    put(Joint.SHOULDER, side, ABDUCTION, other ? otherAbduction : abduction);
  }

  private static double wrapped(double degrees) {
    return Math.IEEEremainder(degrees, 360);
  }

  private void leg(Side side) {
    int sg = side.sign();
    Frame thigh = skeleton.limb(Limb.THIGH, side);
    Frame shank = skeleton.limb(Limb.SHANK, side);
    Euler hip = Euler.zxy(between(skeleton.pelvis(), thigh));
    put(Joint.HIP, side, FLEXION, hip.z());
    put(Joint.HIP, side, ABDUCTION, -sg * hip.x());
    put(Joint.HIP, side, ROTATION, -sg * hip.y());
    put(Joint.KNEE, side, FLEXION, -Euler.zxy(between(thigh, shank)).z());
    Euler ankle = Euler.zxy(between(shank, skeleton.limb(Limb.FOOT, side)));
    put(Joint.ANKLE, side, DORSIFLEXION, ankle.z());
  }
}
