package goniograph.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Joint angles to skeleton and back. */
class KinematicsTest {
  private static final List<Freedom> ANGLES =
      Freedom.all().stream().filter(f -> f.movement() != Movement.TUCK).toList();

  /** Random angles inside the hard limits; what has no limit moves by up to 40. */
  static JointAngles random(Random random) {
    JointAngles angles = JointAngles.NONE;
    for (Freedom freedom : ANGLES) {
      MotionRange range =
          RangeOfMotion.hard(freedom, false).orElse(new MotionRange(-40, 40, "test"));
      double low = freedom.joint() == Joint.HAND ? 0 : range.low();
      double value = low + (range.high() - low) * random.nextDouble();
      angles =
          angles.with(freedom, freedom.movement().unit() == Movement.Unit.CM ? value / 20 : value);
    }
    return angles;
  }

  /** Flexion and abduction of an arm have one reading only while their sum is below 180. */
  private static boolean oneReading(JointAngles angles) {
    for (Side side : Side.values()) {
      double sum =
          Math.abs(angles.get(Joint.SHOULDER, side, Movement.FLEXION))
              + Math.abs(angles.get(Joint.SHOULDER, side, Movement.ABDUCTION));
      if (sum > 175) {
        return false;
      }
    }
    return true;
  }

  @Test
  void whatAnAuthorTypesIsWhatIsRead() {
    Random random = new Random(20261125);
    int checked = 0;
    for (BasePosture base : BasePosture.values()) {
      for (int i = 0; i < 300; i++) {
        JointAngles typed = random(random);
        if (!oneReading(typed)) {
          continue;
        }
        Skeleton skeleton =
            Kinematics.skeleton(Body.ADULT, base.turn(), typed, new Vec(.3, .5, -.2));
        JointAngles read = Reading.of(skeleton, base.turn());
        for (Freedom freedom : ANGLES) {
          assertEquals(typed.get(freedom), read.get(freedom), 1e-6, base + " " + freedom);
        }
        checked++;
      }
    }
    assertTrue(checked > 1000, "only " + checked + " poses");
  }

  @Test
  void mirroredAnglesGiveTheMirroredSkeleton() {
    Random random = new Random(7);
    for (BasePosture base : BasePosture.values()) {
      JointAngles angles = random(random);
      Vec root = new Vec(.1, .2, .3);
      Skeleton one = Kinematics.skeleton(Body.ADULT, base.turn(), angles, root);
      Skeleton other =
          Kinematics.skeleton(
              Body.ADULT, base.mirrored().turn(), angles.mirrored(), mirrored(base, root));
      for (SpineJoint joint : SpineJoint.values()) {
        assertMirrored(one.spine(joint), other.spine(joint), base);
      }
      for (Side side : Side.values()) {
        for (Limb limb : Limb.values()) {
          assertMirrored(one.limb(limb, side), other.limb(limb, side.other()), base);
        }
      }
    }
  }

  private static void assertMirrored(Frame one, Frame other, BasePosture base) {
    for (Vec local : List.of(Vec.ZERO, new Vec(.1, 0, 0), new Vec(0, .1, 0), new Vec(0, 0, .1))) {
      Vec p = one.point(local);
      Vec q = other.point(local.x(), local.y(), -local.z());
      assertEquals(0, mirrored(base, p).minus(q).length(), 1e-9);
    }
  }

  /** Lying on a side, the body faces Z and its mirror lies with the head the other way in X. */
  private static Vec mirrored(BasePosture base, Vec p) {
    return base == base.mirrored() ? new Vec(p.x(), p.y(), -p.z()) : new Vec(-p.x(), p.y(), p.z());
  }

  @Test
  void standsAsTallAsTheBody() {
    Skeleton s = standing();
    double sole = Landmarks.heel(s, Side.LEFT).y();
    // Drillis and Contini 1966 (Winter 2009, figure 4.1): all landmarks are fractions of stature.
    assertEquals(1.000, Landmarks.vertex(s).y() - sole, .010);
    assertEquals(.530, Landmarks.hip(s, Side.LEFT).y() - sole, .001);
    assertEquals(.285, Landmarks.knee(s, Side.LEFT).y() - sole, .001);
    assertEquals(.039, Landmarks.ankle(s, Side.LEFT).y() - sole, 1e-9);
    // The shoulder centre is the house's own and lies 2 to 3 cm below the acromion of the table.
    assertEquals(.818, Landmarks.shoulder(s, Side.LEFT).y() - sole, .020);
  }

  @Test
  void neutralPlumbLineLiesWithinTheTrunk() {
    // The plumb line of Kendall: ear, shoulder, hip and ankle one above the other. Common practice;
    // a tolerance of 4 cm.
    Skeleton s = standing();
    double ankle = Landmarks.ankle(s, Side.LEFT).x();
    assertEquals(ankle, Landmarks.ears(s).x(), .04 / 1.7);
    assertEquals(ankle, Landmarks.shoulder(s, Side.LEFT).x(), .04 / 1.7);
    assertEquals(ankle, Landmarks.hip(s, Side.LEFT).x(), .04 / 1.7);
  }

  @Test
  void tuckedAndPokedChinsChangeTheCraniovertebralAngle() {
    // Neutral 50 to 55: people without neck pain, 50.6 +- 2.1 (Lau 2009, Manual Therapy 14:363);
    // the bounds of tuck and poke are the house's own.
    double neutral = Posture.craniovertebral(standing());
    assertTrue(neutral > 50 && neutral < 55, "neutral " + neutral);
    double tucked = Posture.craniovertebral(head(2.5));
    assertTrue(tucked > 60, "tucked " + tucked);
    double poked = Posture.craniovertebral(head(-3));
    assertTrue(poked < 42, "poked " + poked);
  }

  @Test
  void tuckMovesTheHeadJointByItsCentimetresAndKeepsTheFaceLevel() {
    Vec neutral = standing().spine(SpineJoint.C0).origin();
    for (double cm : List.of(-3.0, -1.0, 1.0, 2.5)) {
      Frame head = head(cm).spine(SpineJoint.C0);
      assertEquals(cm, (neutral.x() - head.origin().x()) * 170, 1e-6);
      assertEquals(1, head.axes().x().x(), 1e-9);
    }
  }

  @Test
  void leanIsPelvisTiltPlusSpineFlexion() {
    JointAngles angles =
        JointAngles.NONE
            .with(Joint.PELVIS, Movement.TILT, 28)
            .with(Joint.LUMBAR, Movement.FLEXION, 7)
            .with(Joint.THORACIC, Movement.FLEXION, 5);
    Skeleton s = Kinematics.skeleton(Body.ADULT, Turn.NONE, angles, Vec.ZERO);
    assertEquals(40, Posture.lean(s), 1e-9);
    assertEquals(0, Posture.lean(standing()), 1e-5);
  }

  @Test
  void armsRaisedSidewaysBendForwardAndCarryNoHiddenTwist() {
    JointAngles sideways =
        JointAngles.NONE
            .both(Joint.SHOULDER, Movement.ABDUCTION, 160)
            .both(Joint.ELBOW, Movement.FLEXION, 90);
    Skeleton s = Kinematics.skeleton(Body.ADULT, Turn.NONE, sideways, Vec.ZERO);
    // raised sideways the elbow's crease turns inward, over the head, not to the back
    assertTrue(
        Landmarks.wrist(s, Side.RIGHT).z() < Landmarks.elbow(s, Side.RIGHT).z(),
        "the hand comes over the head");
    JointAngles forward = JointAngles.NONE.both(Joint.SHOULDER, Movement.FLEXION, 90);
    Frame arm =
        Kinematics.skeleton(Body.ADULT, Turn.NONE, forward, Vec.ZERO)
            .limb(Limb.UPPER_ARM, Side.RIGHT);
    // Codman: flexion alone is a turn about the sideways axis alone, so that axis stays where it
    // was
    assertEquals(1, arm.axes().z().z(), 1e-9);
  }

  /** The velocity of every joint by finite differences against the rotation axis times the arm. */
  @Test
  void derivativesAgreeWithTheGeometricJacobian() {
    Random random = new Random(11);
    double h = 1e-4;
    for (int i = 0; i < 50; i++) {
      JointAngles q = random(random);
      for (Side side : Side.values()) {
        checkJacobian(q, Freedom.of(Joint.KNEE, side, Movement.FLEXION), h, Limb.SHANK, -1);
        checkJacobian(q, Freedom.of(Joint.ELBOW, side, Movement.FLEXION), h, Limb.FOREARM, 1);
        checkJacobian(q, Freedom.of(Joint.ANKLE, side, Movement.DORSIFLEXION), h, Limb.FOOT, 1);
      }
    }
  }

  private static void checkJacobian(JointAngles q, Freedom freedom, double h, Limb limb, int sign) {
    Side side = freedom.side().orElseThrow();
    Vec point = new Vec(.02, -.11, .01);
    Vec plus = at(q.with(freedom, q.get(freedom) + h)).limb(limb, side).point(point);
    Vec minus = at(q.with(freedom, q.get(freedom) - h)).limb(limb, side).point(point);
    Vec measured = plus.minus(minus).times(1 / Math.toRadians(2 * h));
    Frame frame = at(q).limb(limb, side);
    Limb parent = Limb.values()[limb.ordinal() - 1];
    Vec axis = at(q).limb(parent, side).axes().z().times(sign);
    Vec expected = axis.cross(frame.point(point).minus(frame.origin()));
    assertEquals(0, measured.minus(expected).length(), 1e-6, freedom.toString());
  }

  private static Skeleton at(JointAngles q) {
    return Kinematics.skeleton(Body.ADULT, Turn.NONE, q, Vec.ZERO);
  }

  private static Skeleton standing() {
    return at(JointAngles.NONE);
  }

  private static Skeleton head(double tuckCm) {
    return at(JointAngles.NONE.with(Joint.HEAD, Movement.TUCK, tuckCm));
  }
}
