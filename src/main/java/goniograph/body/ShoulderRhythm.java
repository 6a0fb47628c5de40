package goniograph.body;

/**
 * How the arm's direction, given by flexion and abduction, becomes a rotation without a hidden
 * twist: a swing along the shortest arc, an external rotation that comes by itself when the arm is
 * raised sideways, and the lift of the shoulder girdle. The amounts are the house's own.
 *
 * @param elevation degrees between arm and hanging, 0 to 180
 * @param plane degrees of the plane of elevation: 0 sideways, 90 forward, -90 backward
 */
record ShoulderRhythm(double elevation, double plane) {

  /** From flexion and abduction in degrees. */
  static ShoulderRhythm of(double flexion, double abduction) {
    double f = Math.toRadians(flexion);
    double a = Math.toRadians(abduction);
    return ofDirection(
        new Vec(Math.sin(f) * Math.cos(a), -Math.cos(f) * Math.cos(a), Math.sin(a)), 1);
  }

  /** From the upper arm's direction in the frame above T2. */
  static ShoulderRhythm ofDirection(Vec d, int sign) {
    return new ShoulderRhythm(
        Math.toDegrees(Math.atan2(Math.hypot(d.x(), d.z()), -d.y())),
        Math.toDegrees(Math.atan2(d.x(), sign * d.z())));
  }

  /** External rotation that comes by itself, in degrees. */
  double automatic() {
    return 90 * clamp((elevation - 50) / 110) * Math.cos(Math.toRadians(plane));
  }

  /** The share of the girdle's lift, 0 to 1. */
  double lift() {
    return clamp((elevation - 40) / 130);
  }

  /** The turn from hanging to the arm's direction along the shortest arc. */
  Turn swing(int sign) {
    return Turn.aboutY(sign * plane)
        .then(Turn.aboutX(-sign * elevation))
        .then(Turn.aboutY(-sign * plane));
  }

  private static double clamp(double share) {
    return Math.max(0, Math.min(1, share));
  }
}
