package goniograph.figure;

import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;

/** The points of the body that marks name. */
final class Tracked {
  private Tracked() {}

  /** Where a pose file's part word is on a skeleton. */
  static Vec point(Skeleton s, String part, Side side) {
    return switch (part) {
      case "hand", "arm", "forearm" -> Landmarks.palm(s, side);
      case "wrist" -> Landmarks.wrist(s, side);
      case "knee", "thigh" -> Landmarks.knee(s, side);
      case "heel" -> Landmarks.heel(s, side);
      case "foot", "leg", "ankle" -> Landmarks.ankle(s, side);
      case "toes" -> Landmarks.toe(s, side);
      case "shoulder" -> Landmarks.shoulder(s, side);
      case "elbow" -> Landmarks.elbow(s, side);
      case "ear" -> Landmarks.tragus(s, side);
      case "calf" -> s.limb(Limb.SHANK, side).point(-.03, -.08, 0);
      case "hips" -> s.pelvis().origin();
      case "nose" ->
          s.spine(SpineJoint.C0).point(Lengths.HEAD.plus(new Vec(Lengths.SKULL.x(), -.01, 0)));
      case "top" -> Landmarks.vertex(s);
      case "neck" -> s.spine(SpineJoint.C5).point(-.02, 0, 0);
      case "low back" -> s.spine(SpineJoint.L3).point(-.03, 0, 0);
      case "upper back" -> s.spine(SpineJoint.T5).point(-.02, 0, 0);
      case "buttock" -> s.pelvis().point(-.045, -.02, side.sign() * .05);
      case "chest" -> s.spine(SpineJoint.T5).point(.08, 0, 0);
      default -> throw new IllegalArgumentException("a point `" + part + "`");
    };
  }
}
