package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Kinematics;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.EnumMap;
import java.util.Map;

/** Bends an arm until its hand, its elbow or its forearm lies where its contact wants it. */
final class ArmSolver {
  /** The shoulder rises with the arm, which moves the arm again; so many rounds settle it. */
  private static final int ROUNDS = 20;

  private ArmSolver() {}

  /**
   * The wrist to a point, the hand with these axes.
   *
   * @param ground the height the elbow keeps above
   */
  static Skeleton reach(Skeleton s, Side side, Vec wrist, Turn hand, double ground) {
    TwoBone bones = bones(s, side, Landmarks.shoulder(s, side), wrist, ground);
    for (int i = 0; i < ROUNDS; i++) {
      Vec direction = bones.middle().minus(bones.start());
      Vec shoulder = Kinematics.shoulderCentre(s, side, direction);
      bones = bones(s, side, shoulder, wrist, ground);
    }
    Vec axis = bones.elbowAxis();
    Frame fore = bones.farFrame(axis);
    return s.with(
        side,
        Map.of(
            Limb.UPPER_ARM, bones.nearFrame(axis),
            Limb.FOREARM, new Frame(fore.origin(), Kinematics.forearmTowards(fore.axes(), hand)),
            Limb.HAND, new Frame(bones.end(), hand)));
  }

  /** The elbow keeps standing out as typed, in part, and to the arm's back, in part. */
  private static TwoBone bones(Skeleton s, Side side, Vec shoulder, Vec wrist, double ground) {
    Vec from = Landmarks.shoulder(s, side);
    Vec line = Landmarks.wrist(s, side).minus(from).unit();
    Vec elbow = Landmarks.elbow(s, side).minus(from);
    Vec typed = elbow.minus(line.times(elbow.dot(line)));
    Vec back = s.limb(Limb.UPPER_ARM, side).axes().x().times(-1);
    Vec pole = (typed.length() < 1e-6 ? back : typed.unit()).times(.6).plus(back.times(.4));
    return TwoBone.reach(shoulder, wrist, Lengths.UPPER_ARM, Lengths.FOREARM, pole)
        .above(ground + Touch.ELBOW, s.spine(SpineJoint.T2).axes().z().times(side.sign()));
  }

  /**
   * The upper arm turned until the elbow's centre is so far out of a face, over the face; the rest
   * of the arm keeps on.
   */
  static Skeleton elbowOn(Skeleton s, Side side, Surface face, double out, double inset) {
    Vec was = Landmarks.elbow(s, side).minus(Landmarks.shoulder(s, side));
    Vec way = ahead(s, was, face.normal());
    Vec centre = Landmarks.shoulder(s, side);
    Vec elbow = over(centre, way, face, out, inset);
    for (int i = 0; i < ROUNDS; i++) {
      centre = Kinematics.shoulderCentre(s, side, elbow.minus(centre));
      elbow = over(centre, way, face, out, inset);
    }
    return turned(s, side, Turn.between(was, elbow.minus(centre)), centre);
  }

  /** An upper arm that stands on its face nearly like a post does not say where it bends to. */
  private static Vec ahead(Skeleton s, Vec arm, Vec normal) {
    Turn chest = s.spine(SpineJoint.T2).axes();
    double length = arm.length();
    double slant = Hands.along(arm.times(1 / length), normal).length();
    Vec front = Hands.along(chest.y().plus(chest.x().times(.5)), normal).unit();
    Vec bent = arm.plus(front.times(length * Math.max(0, .5 - slant)));
    return bent.unit().times(length);
  }

  private static Vec over(Vec centre, Vec way, Surface face, double out, double inset) {
    Vec typed = Touch.swung(centre, centre.plus(way), face, out);
    Vec foot = Touch.foot(face, typed);
    Vec nearest = Touch.place(face, foot, inset);
    if (nearest.minus(foot).length() < 1e-9) {
      return typed;
    }
    Vec towards = nearest.plus(face.normal().times(out)).minus(centre).unit();
    return Touch.swung(centre, centre.plus(towards.times(way.length())), face, out);
  }

  private static Skeleton turned(Skeleton s, Side side, Turn turn, Vec shoulder) {
    Vec before = Landmarks.shoulder(s, side);
    Map<Limb, Frame> arm = new EnumMap<>(Limb.class);
    for (Limb limb : new Limb[] {Limb.UPPER_ARM, Limb.FOREARM, Limb.HAND}) {
      Frame frame = s.limb(limb, side);
      Vec origin = shoulder.plus(turn.apply(frame.origin().minus(before)));
      arm.put(limb, new Frame(origin, turn.then(frame.axes())));
    }
    return s.with(side, arm);
  }

  /**
   * The forearm laid in a direction; the elbow stays in its place, wrist and turn of the forearm
   * stay as typed.
   */
  static Skeleton forearmAlong(Skeleton s, Side side, Vec direction) {
    Frame upper = s.limb(Limb.UPPER_ARM, side);
    Frame fore = s.limb(Limb.FOREARM, side);
    Vec y = upper.axes().y();
    Vec hinge = direction.cross(y);
    Vec z = hinge.length() < 1e-6 ? upper.axes().z() : hinge.unit();
    Turn arm = new Turn(y.cross(z), y, z);
    Vec back = direction.times(-1);
    Turn bent = new Turn(back.cross(z), back, z).then(pronation(upper, fore));
    Frame laid = new Frame(fore.origin(), bent);
    Turn wrist = fore.axes().inverse().then(s.limb(Limb.HAND, side).axes());
    return s.with(
        side,
        Map.of(
            Limb.UPPER_ARM, new Frame(upper.origin(), arm),
            Limb.FOREARM, laid,
            Limb.HAND, new Frame(laid.point(0, -Lengths.FOREARM, 0), bent.then(wrist))));
  }

  /** The forearm's turn about itself; what is left of its turn against the arm is elbow flexion. */
  private static Turn pronation(Frame upper, Frame fore) {
    Turn own = upper.axes().inverse().then(fore.axes());
    return Turn.aboutY(Math.toDegrees(Math.atan2(-own.x().z(), own.z().z())));
  }

  /** The hand given new axes, and the forearm turned about itself as far as that needs. */
  static Skeleton handTurned(Skeleton s, Side side, Turn hand) {
    Frame upper = s.limb(Limb.UPPER_ARM, side);
    Frame fore = s.limb(Limb.FOREARM, side);
    Turn unturned = fore.axes().then(pronation(upper, fore).inverse());
    return s.with(
        side,
        Map.of(
            Limb.FOREARM, new Frame(fore.origin(), Kinematics.forearmTowards(unturned, hand)),
            Limb.HAND, new Frame(Landmarks.wrist(s, side), hand)));
  }
}
