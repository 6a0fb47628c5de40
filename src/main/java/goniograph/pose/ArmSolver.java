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
import java.util.Map;

/** Bends an arm until its hand lies where its contact wants it. */
final class ArmSolver {
  private ArmSolver() {}

  /** The wrist to a point, the hand with these axes. */
  static Skeleton reach(Skeleton s, Side side, Vec wrist, Turn hand) {
    Vec shoulder = Landmarks.shoulder(s, side);
    TwoBone bones = bones(s, side, shoulder, wrist);
    for (int i = 0; i < 8; i++) { // the shoulder rises with the arm, which moves the arm again
      Vec direction = bones.middle().minus(bones.start());
      bones = bones(s, side, Kinematics.shoulderCentre(s, side, direction), wrist);
    }
    Vec axis = bones.elbowAxis();
    Frame fore = bones.farFrame(axis);
    Skeleton bent =
        s.with(
            side,
            Map.of(
                Limb.UPPER_ARM, bones.nearFrame(axis),
                Limb.FOREARM,
                    new Frame(fore.origin(), Kinematics.forearmTowards(fore.axes(), hand)),
                Limb.HAND, new Frame(bones.end(), hand)));
    return bent;
  }

  /** The elbow keeps standing out as typed, in part, and to the arm's back, in part. */
  private static TwoBone bones(Skeleton s, Side side, Vec shoulder, Vec wrist) {
    Vec from = Landmarks.shoulder(s, side);
    Vec line = Landmarks.wrist(s, side).minus(from).unit();
    Vec elbow = Landmarks.elbow(s, side).minus(from);
    Vec typed = elbow.minus(line.times(elbow.dot(line)));
    Vec back = s.limb(Limb.UPPER_ARM, side).axes().x().times(-1);
    Vec pole = (typed.length() < 1e-6 ? back : typed.unit()).times(.6).plus(back.times(.4));
    return TwoBone.reach(shoulder, wrist, Lengths.UPPER_ARM, Lengths.FOREARM, pole)
        .above(Clearance.ELBOW, s.spine(SpineJoint.T2).axes().z().times(side.sign()));
  }
}
