package goniograph.pose;

/**
 * A parallel view. Yaw 0 is seen from the person's right with the person facing right on paper, 90
 * from the front.
 *
 * @param yaw degrees about the vertical
 * @param elevation degrees above the horizon
 */
public record Camera(double yaw, double elevation) {}
