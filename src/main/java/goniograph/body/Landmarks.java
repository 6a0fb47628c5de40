package goniograph.body;

/** Points of a skeleton that have a name, in body heights. */
public final class Landmarks {
  private Landmarks() {}

  public static Vec hip(Skeleton s, Side side) {
    return s.limb(Limb.THIGH, side).origin();
  }

  public static Vec knee(Skeleton s, Side side) {
    return s.limb(Limb.SHANK, side).origin();
  }

  public static Vec ankle(Skeleton s, Side side) {
    return s.limb(Limb.FOOT, side).origin();
  }

  public static Vec shoulder(Skeleton s, Side side) {
    return s.limb(Limb.UPPER_ARM, side).origin();
  }

  public static Vec elbow(Skeleton s, Side side) {
    return s.limb(Limb.FOREARM, side).origin();
  }

  public static Vec wrist(Skeleton s, Side side) {
    return s.limb(Limb.HAND, side).origin();
  }

  /** The middle of the palm. */
  public static Vec palm(Skeleton s, Side side) {
    return s.limb(Limb.HAND, side).point(0, -Lengths.PALM, 0);
  }

  /** The tip of the middle finger, bent as the hand is. */
  public static Vec fingertip(Skeleton s, Side side) {
    return Finger.MIDDLE.joints(s, side).get(3);
  }

  /** The back of the heel at the sole. */
  public static Vec heel(Skeleton s, Side side) {
    return s.limb(Limb.FOOT, side).point(-Lengths.HEEL, -Lengths.ANKLE, 0);
  }

  /** The ball of the foot at the sole. */
  public static Vec ball(Skeleton s, Side side) {
    return s.limb(Limb.FOOT, side).point(Lengths.BALL, -Lengths.ANKLE, 0);
  }

  /** The toe tip at the sole, bent up where the floor asks it. */
  public static Vec toe(Skeleton s, Side side) {
    return Toes.frame(s, side).point(Lengths.TOE, -Lengths.ANKLE, 0);
  }

  /** The middle of the head. */
  public static Vec head(Skeleton s) {
    return s.spine(SpineJoint.C0).point(Lengths.HEAD);
  }

  /** The top of the skull along the head's own up. */
  public static Vec vertex(Skeleton s) {
    return s.spine(SpineJoint.C0).point(Lengths.HEAD.plus(new Vec(0, Lengths.SKULL.y(), 0)));
  }

  /** The ear canal on one side. */
  public static Vec tragus(Skeleton s, Side side) {
    Vec right = Lengths.TRAGUS;
    Vec own = new Vec(right.x(), right.y(), side.sign() * right.z());
    return s.spine(SpineJoint.C0).point(Lengths.HEAD.plus(own));
  }

  /** The middle between the ear canals. */
  public static Vec ears(Skeleton s) {
    return tragus(s, Side.LEFT).towards(tragus(s, Side.RIGHT), .5);
  }

  /** The skin over the spinous process of C7. */
  public static Vec c7Skin(Skeleton s) {
    return s.spine(SpineJoint.C7).point(Lengths.C7_SKIN);
  }
}
