package goniograph.body;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.RotationOrder;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/**
 * Joint matrices against Apache Commons Math's Rotation class, with the intrinsic orders and signs
 * of the International Society of Biomechanics (Wu et al. 2002, 2005) as the method lists them:
 * hip, knee, ankle and spine about Z, X, Y; forearm about Z then Y; wrist about X, Z.
 */
class RotationTest {
  private static final RotationConvention FRAMES = RotationConvention.FRAME_TRANSFORM;

  private final Random random = new Random(7);

  private double degrees(double most) {
    return (2 * random.nextDouble() - 1) * most;
  }

  @Test
  void everyJointTurnsAsTheLibrarysRotation() {
    for (int i = 0; i < 200; i++) {
      JointAngles angles = random();
      Skeleton s = Kinematics.skeleton(Body.ADULT, Turn.NONE, angles, Vec.ZERO);
      pelvisAndSpine(s, angles);
      for (Side side : Side.values()) {
        leg(s, angles, side);
        arm(s, angles, side);
      }
    }
  }

  private JointAngles random() {
    JointAngles angles = JointAngles.NONE;
    for (Freedom freedom : Freedom.all()) {
      boolean turns = freedom.movement().unit() == Movement.Unit.DEGREES;
      angles = turns ? angles.with(freedom, degrees(60)) : angles;
    }
    return angles;
  }

  private static void pelvisAndSpine(Skeleton s, JointAngles a) {
    assertSame(
        zxy(-a.get(Joint.PELVIS, Movement.TILT), bend(a, Joint.PELVIS), -turn(a, Joint.PELVIS)),
        s.pelvis().axes());
    Turn below = s.pelvis().axes();
    for (SpineJoint joint : SpineJoint.values()) {
      Joint region = joint.region();
      double n = SpineJoint.count(region);
      double flexion = a.get(region, Movement.FLEXION);
      Rotation share = zxy(-flexion / n, bend(a, region) / n, -turn(a, region) / n);
      assertSame(share, below.inverse().then(s.spine(joint).axes()));
      below = s.spine(joint).axes();
    }
  }

  private static double bend(JointAngles a, Joint joint) {
    return a.get(joint, Movement.BEND);
  }

  private static double turn(JointAngles a, Joint joint) {
    return a.get(joint, Movement.TURN);
  }

  private static void leg(Skeleton s, JointAngles a, Side side) {
    int sg = side.sign();
    assertSame(
        zxy(
            a.get(Joint.HIP, side, Movement.FLEXION),
            -sg * a.get(Joint.HIP, side, Movement.ABDUCTION),
            -sg * a.get(Joint.HIP, side, Movement.ROTATION)),
        between(s.pelvis(), s.limb(Limb.THIGH, side)));
    assertSame(
        zxy(-a.get(Joint.KNEE, side, Movement.FLEXION), 0, 0),
        between(s.limb(Limb.THIGH, side), s.limb(Limb.SHANK, side)));
    assertSame(
        zxy(a.get(Joint.ANKLE, side, Movement.DORSIFLEXION), 0, 0),
        between(s.limb(Limb.SHANK, side), s.limb(Limb.FOOT, side)));
  }

  /** Below the shoulder, whose swing along the shortest arc is compared by its axis and angle. */
  private static void arm(Skeleton s, JointAngles a, Side side) {
    int sg = side.sign();
    double f = Math.toRadians(a.get(Joint.SHOULDER, side, Movement.FLEXION));
    double b = Math.toRadians(a.get(Joint.SHOULDER, side, Movement.ABDUCTION));
    Vector3D arm =
        new Vector3D(Math.sin(f) * Math.cos(b), -Math.cos(f) * Math.cos(b), sg * Math.sin(b));
    double elevation = Math.toDegrees(Math.acos(-arm.getY()));
    double plane = Math.atan2(arm.getX(), sg * arm.getZ());
    double by = 90 * Math.max(0, Math.min(1, (elevation - 50) / 110)) * Math.cos(plane);
    Rotation swing = new Rotation(Vector3D.MINUS_J, arm);
    double out = a.get(Joint.SHOULDER, side, Movement.ROTATION) + by;
    Rotation twist =
        new Rotation(
            Vector3D.PLUS_J, Math.toRadians(-sg * out), RotationConvention.VECTOR_OPERATOR);
    assertActs(
        swing.compose(twist, RotationConvention.VECTOR_OPERATOR),
        between(s.spine(SpineJoint.T2), s.limb(Limb.UPPER_ARM, side)));
    assertSame(
        zxy(
            a.get(Joint.ELBOW, side, Movement.FLEXION),
            0,
            sg * a.get(Joint.FOREARM, side, Movement.PRONATION)),
        between(s.limb(Limb.UPPER_ARM, side), s.limb(Limb.FOREARM, side)));
    assertSame(
        new Rotation(
            RotationOrder.XZY,
            FRAMES,
            Math.toRadians(sg * a.get(Joint.WRIST, side, Movement.FLEXION)),
            Math.toRadians(a.get(Joint.WRIST, side, Movement.RADIAL)),
            0),
        between(s.limb(Limb.FOREARM, side), s.limb(Limb.HAND, side)));
  }

  private static Turn between(Frame parent, Frame child) {
    return parent.axes().inverse().then(child.axes());
  }

  private static Rotation zxy(double z, double x, double y) {
    return new Rotation(
        RotationOrder.ZXY, FRAMES, Math.toRadians(z), Math.toRadians(x), Math.toRadians(y));
  }

  /** A frame transform takes a vector into the turned frame: the inverse of our Turn's apply. */
  private static void assertSame(Rotation frames, Turn ours) {
    assertVec(frames.applyTo(new Vector3D(.3, -.5, .8)), ours.invert(new Vec(.3, -.5, .8)));
    assertVec(frames.applyTo(new Vector3D(.9, .2, -.4)), ours.invert(new Vec(.9, .2, -.4)));
  }

  private static void assertActs(Rotation vectors, Turn ours) {
    assertVec(vectors.applyTo(new Vector3D(.3, -.5, .8)), ours.apply(new Vec(.3, -.5, .8)));
    assertVec(vectors.applyTo(new Vector3D(.9, .2, -.4)), ours.apply(new Vec(.9, .2, -.4)));
  }

  private static void assertVec(Vector3D theirs, Vec ours) {
    assertEquals(theirs.getX(), ours.x(), 1e-9);
    assertEquals(theirs.getY(), ours.y(), 1e-9);
    assertEquals(theirs.getZ(), ours.z(), 1e-9);
  }
}
