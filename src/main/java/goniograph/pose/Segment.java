package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.Limb;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A segment of the body that an author may lay in the world, from the trunk outwards, with the
 * movements that lay it: the first is its own and may not be typed as well, the second helps.
 */
public enum Segment {
  TRUNK(Joint.PELVIS, Movement.TILT, Joint.PELVIS, Movement.BEND),
  HEAD(Joint.HEAD, Movement.FLEXION, Joint.HEAD, Movement.BEND),
  UPPER_ARM(Joint.SHOULDER, Movement.FLEXION, Joint.SHOULDER, Movement.ABDUCTION),
  FOREARM(Joint.ELBOW, Movement.FLEXION, Joint.SHOULDER, Movement.ROTATION),
  THIGH(Joint.HIP, Movement.FLEXION, Joint.HIP, Movement.ABDUCTION),
  SHANK(Joint.KNEE, Movement.FLEXION, Joint.HIP, Movement.ROTATION),
  FOOT(Joint.ANKLE, Movement.DORSIFLEXION, Joint.ANKLE, Movement.DORSIFLEXION);

  private final Joint joint;
  private final Movement own;
  private final Joint helpingJoint;
  private final Movement helping;

  Segment(Joint joint, Movement own, Joint helpingJoint, Movement helping) {
    this.joint = joint;
    this.own = own;
    this.helpingJoint = helpingJoint;
    this.helping = helping;
  }

  /** The author's word, for instance {@code upper arm}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** True where the segment stands on both sides. */
  public boolean paired() {
    return joint.paired();
  }

  /** The segment of a word. */
  public static Optional<Segment> of(String word) {
    return Arrays.stream(values()).filter(segment -> segment.word().equals(word)).findFirst();
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Segment::word).toList();
  }

  /** The segment that a joint moves, where it is one of these. */
  static Optional<Segment> movedBy(Joint joint) {
    return switch (joint) {
      case LUMBAR, THORACIC -> Optional.of(TRUNK);
      case NECK -> Optional.of(HEAD);
      default -> Arrays.stream(values()).filter(segment -> segment.joint == joint).findFirst();
    };
  }

  /** The movement that is the segment's own. */
  Freedom own(Optional<Side> side) {
    return new Freedom(joint, side, own);
  }

  /** All movements that lay it. */
  List<Freedom> freedoms(Optional<Side> side) {
    return List.of(own(side), new Freedom(helpingJoint, side, helping)).stream()
        .distinct()
        .toList();
  }

  /**
   * Where the segment points: limbs to their far end, the foot to its toes, the trunk up.
   *
   * @param nose true for where the face looks, false for the top of the head
   */
  Vec direction(Skeleton s, Optional<Side> side, boolean nose) {
    return switch (this) {
      case TRUNK -> s.spine(SpineJoint.T5).axes().y();
      case HEAD -> nose ? head(s).axes().x() : head(s).axes().y();
      case FOOT -> frame(s, side).axes().x();
      default -> frame(s, side).axes().y().times(-1);
    };
  }

  /** Its near end. */
  Vec origin(Skeleton s, Optional<Side> side) {
    return switch (this) {
      case TRUNK -> s.pelvis().origin();
      case HEAD -> head(s).origin();
      default -> frame(s, side).origin();
    };
  }

  private static Frame head(Skeleton s) {
    return s.spine(SpineJoint.C0);
  }

  private Frame frame(Skeleton s, Optional<Side> side) {
    return s.limb(Limb.valueOf(name()), side.orElseThrow());
  }
}
