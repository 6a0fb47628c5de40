package goniograph.pose;

import goniograph.body.Vec;

/**
 * A parallel view. Yaw 0 is seen from the person's right with the person facing right on paper, 90
 * from the front.
 *
 * @param yaw degrees about the vertical
 * @param elevation degrees above the horizon
 */
public record Camera(double yaw, double elevation) {

  /** The unit vector towards the viewer. */
  public Vec toViewer() {
    double turn = Math.toRadians(yaw);
    double raised = Math.toRadians(elevation);
    return new Vec(
        Math.sin(turn) * Math.cos(raised), Math.sin(raised), Math.cos(turn) * Math.cos(raised));
  }

  /** The unit vector to the right on paper. */
  public Vec right() {
    double turn = Math.toRadians(yaw);
    return new Vec(Math.cos(turn), 0, -Math.sin(turn));
  }
}
