package goniograph.docs;

import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.MotionRange;
import goniograph.body.Movement;
import goniograph.body.RangeOfMotion;
import goniograph.body.Side;
import goniograph.pose.PoseFile;
import java.util.Optional;

/** A pose for every movement of every joint: from its second word to its first. */
final class JointGuide {
  private final Samples samples;

  JointGuide(Samples samples) {
    this.samples = samples;
  }

  /** The pose that shows a movement both ways. */
  PoseFile pose(Joint joint, Movement movement) {
    String key = joint.word() + (joint.paired() ? " right" : "");
    return samples.of(
        "pose: "
            + name(joint, movement)
            + "\nbase: standing\nview: "
            + view(joint, movement)
            + focus(joint)
            + "\ncontacts: ["
            + (leg(joint) ? "left foot on floor" : "feet on floor")
            + "]\n"
            + (elbowBent(joint, movement) ? "angles: {elbow right: flexion 90}\n" : "")
            + "start: {"
            + key
            + ": "
            + typed(movement, least(joint, movement))
            + "}\nend: {"
            + key
            + ": "
            + typed(movement, most(joint, movement))
            + "}\n"
            + moving(joint));
  }

  static String name(Joint joint, Movement movement) {
    return ("joint-" + joint.word() + "-" + movement.positive()).replace(' ', '-');
  }

  private static String typed(Movement movement, int value) {
    return movement.word(value) + " " + Math.abs(value);
  }

  /** Two thirds of what a joint can do, where a limit is known, and at most 60 degrees. */
  private static int most(Joint joint, Movement movement) {
    return movement.unit() == Movement.Unit.CM
        ? 4
        : rounded(range(joint, movement).map(MotionRange::high).orElse(40.0));
  }

  private static int least(Joint joint, Movement movement) {
    return movement.unit() == Movement.Unit.CM
        ? -4
        : rounded(range(joint, movement).map(MotionRange::low).orElse(-40.0));
  }

  private static int rounded(double limit) {
    return 5 * (int) Math.round(Math.max(-60, Math.min(60, limit * 2 / 3)) / 5);
  }

  private static Optional<MotionRange> range(Joint joint, Movement movement) {
    Optional<Side> side = joint.paired() ? Optional.of(Side.RIGHT) : Optional.empty();
    return RangeOfMotion.hard(new Freedom(joint, side, movement), false);
  }

  private static String view(Joint joint, Movement movement) {
    return switch (movement) {
      case BEND, ABDUCTION, RAISE -> "front";
      case TURN, PRONATION -> "three-quarter";
      case ROTATION -> joint == Joint.HIP ? "front" : "oblique-top";
      case RADIAL -> "side";
      default -> "side";
    };
  }

  private static String focus(Joint joint) {
    return switch (joint) {
      case NECK, HEAD, SHOULDER, ELBOW -> "\nfocus: upper body";
      case FOREARM, WRIST -> "\nfocus: right arm";
      case ANKLE -> "\nfocus: right foot";
      default -> "";
    };
  }

  private static boolean leg(Joint joint) {
    return joint == Joint.HIP || joint == Joint.KNEE || joint == Joint.ANKLE;
  }

  private static boolean elbowBent(Joint joint, Movement movement) {
    return joint == Joint.FOREARM
        || joint == Joint.WRIST
        || (joint == Joint.SHOULDER && movement == Movement.ROTATION);
  }

  private static String moving(Joint joint) {
    return switch (joint) {
      case NECK, HEAD -> "moving: head\n";
      case HIP, KNEE -> "moving: right leg\n";
      case ANKLE -> "moving: right foot\n";
      case SHOULDER, ELBOW -> "moving: right arm\n";
      case FOREARM -> "moving: right forearm\n";
      case WRIST -> "moving: right hand\n";
      default -> "";
    };
  }
}
