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
import static goniograph.body.Movement.TUCK;
import static goniograph.body.Movement.TURN;

import java.util.EnumMap;
import java.util.Map;

/**
 * Forward kinematics: joint angles to a skeleton. Rotations are intrinsic about Z, X, Y of the
 * child segment (flexion, abduction or bending, rotation), the sequence of the International
 * Society of Biomechanics for hip and spine (Wu et al. 2002); the shoulder swings along the
 * shortest arc instead, so that no twist hides in it.
 */
public final class Kinematics {
  private Kinematics() {}

  /**
   * The skeleton of a pose.
   *
   * @param base how the pelvis lies in the world before the pelvis angles
   * @param angles every joint's angles
   * @param root the middle between the hip centres, in body heights
   */
  public static Skeleton skeleton(Body body, Turn base, JointAngles angles, Vec root) {
    Frame pelvis = new Frame(root, base.then(trunkTurn(pelvisAngles(angles))));
    Map<SpineJoint, Frame> spine = spine(body, angles, pelvis);
    return new Skeleton(
        body,
        pelvis,
        spine,
        limbs(body, angles, pelvis, spine, Side.LEFT),
        limbs(body, angles, pelvis, spine, Side.RIGHT),
        Map.of(Side.LEFT, fingers(angles, Side.LEFT), Side.RIGHT, fingers(angles, Side.RIGHT)));
  }

  /** Flexion, bend and turn of a part of the trunk, as a rotation. */
  static Turn trunkTurn(TrunkAngles a) {
    return Turn.aboutZ(-a.flexion()).then(Turn.aboutX(a.bend())).then(Turn.aboutY(-a.turn()));
  }

  private static TrunkAngles pelvisAngles(JointAngles a) {
    return new TrunkAngles(
        a.get(Joint.PELVIS, TILT), a.get(Joint.PELVIS, BEND), a.get(Joint.PELVIS, TURN));
  }

  /** A joint of the hand that nobody names rests. */
  private static Fingers fingers(JointAngles angles, Side side) {
    Fingers rest = Fingers.REST;
    return new Fingers(
        finger(angles, side, Movement.KNUCKLES, rest.knuckles()),
        finger(angles, side, Movement.MIDDLE, rest.middle()),
        finger(angles, side, Movement.ENDS, rest.ends()),
        finger(angles, side, Movement.THUMB, rest.thumb()));
  }

  private static double finger(JointAngles angles, Side side, Movement joint, double rest) {
    return angles.values().getOrDefault(Freedom.of(Joint.HAND, side, joint), rest);
  }

  private static Map<SpineJoint, Frame> spine(Body body, JointAngles angles, Frame pelvis) {
    double tuckCm = angles.get(Joint.HEAD, TUCK);
    double tuck = tuckCm == 0 ? 0 : ChinTuck.degrees(angles, body.fraction(tuckCm));
    return spine(angles, pelvis, tuck);
  }

  /** The spine with the neck turned back, and the head forward again, by {@code tuck} degrees. */
  static Map<SpineJoint, Frame> spine(JointAngles angles, Frame pelvis, double tuck) {
    Map<SpineJoint, Frame> spine = new EnumMap<>(SpineJoint.class);
    Frame below = pelvis;
    for (SpineJoint joint : SpineJoint.values()) {
      TrunkAngles share = share(angles, joint.region(), tuck);
      below = new Frame(below.point(Lengths.spineStep(joint)), below.axes().then(trunkTurn(share)));
      spine.put(joint, below);
    }
    return spine;
  }

  private static TrunkAngles share(JointAngles angles, Joint region, double tuck) {
    int n = SpineJoint.count(region);
    double extra = region == Joint.NECK ? -tuck : region == Joint.HEAD ? tuck : 0;
    return new TrunkAngles(
        (angles.get(region, FLEXION) + extra) / n,
        angles.get(region, BEND) / n,
        angles.get(region, TURN) / n);
  }

  private static Map<Limb, Frame> limbs(
      Body body, JointAngles angles, Frame pelvis, Map<SpineJoint, Frame> spine, Side side) {
    Map<Limb, Frame> limbs = new EnumMap<>(Limb.class);
    Frame chest = spine.get(SpineJoint.T2);
    if (chest == null) {
      throw new IllegalStateException("a spine without T2");
    }
    arm(body, angles, chest, side, limbs);
    leg(angles, pelvis, side, limbs);
    return limbs;
  }

  private static void arm(
      Body body, JointAngles a, Frame chest, Side side, Map<Limb, Frame> limbs) {
    int sg = side.sign();
    ShoulderRhythm rhythm =
        ShoulderRhythm.of(
            a.get(Joint.SHOULDER, side, FLEXION), a.get(Joint.SHOULDER, side, ABDUCTION));
    Vec moved =
        new Vec(
            body.fraction(a.get(Joint.SHOULDER, side, PROTRACTION)),
            body.fraction(a.get(Joint.SHOULDER, side, RAISE)),
            0);
    Turn upperArm =
        rhythm
            .swing(sg)
            .then(Turn.aboutY(-sg * (a.get(Joint.SHOULDER, side, ROTATION) + rhythm.automatic())));
    Turn elbow =
        Turn.aboutZ(a.get(Joint.ELBOW, side, FLEXION))
            .then(Turn.aboutY(sg * a.get(Joint.FOREARM, side, PRONATION)));
    Turn wrist =
        Turn.aboutX(sg * a.get(Joint.WRIST, side, FLEXION))
            .then(Turn.aboutZ(a.get(Joint.WRIST, side, RADIAL)));
    Frame upper =
        new Frame(chest.point(shoulder(rhythm, sg).plus(moved)), chest.axes().then(upperArm));
    Frame fore = child(upper, Lengths.UPPER_ARM, elbow);
    limbs.put(Limb.UPPER_ARM, upper);
    limbs.put(Limb.FOREARM, fore);
    limbs.put(Limb.HAND, child(fore, Lengths.FOREARM, wrist));
  }

  /** The shoulder centre in the frame above T2; it rises with the arm (scapulohumeral rhythm). */
  static Vec shoulder(ShoulderRhythm rhythm, int sign) {
    Vec rest = Lengths.SHOULDER;
    return new Vec(
        rest.x(), rest.y() + .030 * rhythm.lift(), sign * (rest.z() - .020 * rhythm.lift()));
  }

  /**
   * The shoulder centre of a skeleton if its upper arm pointed in {@code direction} instead, with
   * the girdle's lift that goes with it.
   */
  public static Vec shoulderCentre(Skeleton skeleton, Side side, Vec direction) {
    Frame upper = skeleton.limb(Limb.UPPER_ARM, side);
    Turn chest = skeleton.spine(SpineJoint.T2).axes();
    Vec now = shoulder(rhythm(chest, upper.axes().y().times(-1), side), side.sign());
    Vec then = shoulder(rhythm(chest, direction, side), side.sign());
    return upper.origin().plus(chest.apply(then.minus(now)));
  }

  private static ShoulderRhythm rhythm(Turn chest, Vec direction, Side side) {
    return ShoulderRhythm.ofDirection(chest.invert(direction), side.sign());
  }

  /**
   * The axes of a forearm that lies along {@code unturned} and turns about itself until the wrist
   * reaches the hand's axes by flexion and deviation alone.
   */
  public static Turn forearmTowards(Turn unturned, Turn hand) {
    return unturned.then(Turn.aboutY(Euler.yxz(unturned.inverse().then(hand)).y()));
  }

  private static void leg(JointAngles a, Frame pelvis, Side side, Map<Limb, Frame> limbs) {
    int sg = side.sign();
    Turn hip =
        Turn.aboutZ(a.get(Joint.HIP, side, FLEXION))
            .then(Turn.aboutX(-sg * a.get(Joint.HIP, side, ABDUCTION)))
            .then(Turn.aboutY(-sg * a.get(Joint.HIP, side, ROTATION)));
    Frame thigh = new Frame(pelvis.point(0, 0, sg * Lengths.HALF_HIP), pelvis.axes().then(hip));
    Frame shank = child(thigh, Lengths.THIGH, Turn.aboutZ(-a.get(Joint.KNEE, side, FLEXION)));
    limbs.put(Limb.THIGH, thigh);
    limbs.put(Limb.SHANK, shank);
    limbs.put(
        Limb.FOOT,
        child(shank, Lengths.SHANK, Turn.aboutZ(a.get(Joint.ANKLE, side, DORSIFLEXION))));
  }

  /** The next segment at the far end of one that points along its own -Y. */
  private static Frame child(Frame parent, double length, Turn turn) {
    return new Frame(parent.point(0, -length, 0), parent.axes().then(turn));
  }
}
