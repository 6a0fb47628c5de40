package goniograph.pose;

import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;

/** Where parts of a solved body are, as rules ask; all in cm. */
public final class BodyPlaces {
  private BodyPlaces() {}

  /**
   * How far the knee or the ankle centre of this side, whichever is farther, is past the body's
   * midline; negative on its own side. The midline is the pelvis's plane of symmetry.
   */
  public static double pastMidlineCm(Skeleton body, Side side) {
    return Math.max(
        past(body, side, body.limb(Limb.SHANK, side).origin()),
        past(body, side, body.limb(Limb.FOOT, side).origin()));
  }

  private static double past(Skeleton body, Side side, Vec joint) {
    double toTheRight = joint.minus(body.pelvis().origin()).dot(body.pelvis().axes().z());
    return body.body().cm(side == Side.RIGHT ? -toTheRight : toTheRight);
  }

  /** How far the top of the neck is below the hip centres; negative where it is above them. */
  public static double headBelowHipsCm(Skeleton body) {
    double hips = body.pelvis().origin().y();
    return body.body().cm(hips - body.spine(SpineJoint.C0).origin().y());
  }
}
