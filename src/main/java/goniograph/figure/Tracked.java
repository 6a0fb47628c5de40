package goniograph.figure;

import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;

/** The point of the body that a movement arrow follows. */
final class Tracked {
  private Tracked() {}

  /** Where a pose file's part word is on a skeleton. */
  static Vec point(Skeleton s, String part, Side side) {
    return switch (part) {
      case "hand", "hands", "arm", "arms", "forearm" -> Landmarks.palm(s, side);
      case "wrist" -> Landmarks.wrist(s, side);
      case "knee", "thigh" -> Landmarks.knee(s, side);
      case "heel" -> Landmarks.heel(s, side);
      case "foot", "leg", "legs" -> Landmarks.ankle(s, side);
      case "calf" -> s.limb(Limb.SHANK, side).point(-.03, -.08, 0);
      case "hips" -> s.pelvis().origin();
      case "nose" ->
          s.spine(SpineJoint.C0).point(Lengths.HEAD.plus(new Vec(Lengths.SKULL.x(), -.01, 0)));
      case "top", "head" -> Landmarks.vertex(s);
      default -> s.spine(SpineJoint.T5).origin();
    };
  }
}
