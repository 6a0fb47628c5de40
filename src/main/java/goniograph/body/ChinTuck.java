package goniograph.body;

import java.util.Map;

/**
 * Drawing the chin in or poking it forward: the neck turns back by an angle shared by its joints,
 * and the head turns forward by the same angle, so that the face stays level.
 */
final class ChinTuck {
  private static final double MOST = 60;
  private static final Frame HOME = new Frame(Vec.ZERO, Turn.NONE);

  private ChinTuck() {}

  /**
   * The angle that moves the head joint back by {@code back} body heights, by bisection; the
   * nearest possible where the neck is too short.
   */
  static double degrees(JointAngles angles, double back) {
    double wanted = headForward(angles, 0) - back;
    double low = -MOST;
    double high = MOST;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (headForward(angles, middle) > wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /** How far the head joint lies ahead of T2, in the frame above T2. */
  private static double headForward(JointAngles angles, double tuck) {
    Map<SpineJoint, Frame> spine = Kinematics.spine(angles, HOME, tuck);
    Frame chest = spine.getOrDefault(SpineJoint.T2, HOME);
    Frame head = spine.getOrDefault(SpineJoint.C0, HOME);
    return chest.axes().invert(head.origin().minus(chest.origin())).x();
  }
}
