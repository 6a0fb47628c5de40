package goniograph.body;

/**
 * Three angles of a rotation, in degrees.
 *
 * @param z about Z
 * @param x about X
 * @param y about Y
 */
record Euler(double z, double x, double y) {

  /** The angles with turn = Rz(z) Rx(x) Ry(y): hip, knee, ankle, spine, elbow. */
  static Euler zxy(Turn r) {
    return new Euler(
        degrees(-r.y().x(), r.y().y()), asin(r.y().z()), degrees(-r.x().z(), r.z().z()));
  }

  /** The angles with turn = Rx(x) Rz(z) Ry(y): wrist. */
  static Euler xzy(Turn r) {
    return new Euler(
        asin(-r.y().x()), degrees(r.y().z(), r.y().y()), degrees(r.z().x(), r.x().x()));
  }

  /** The angles with turn = Ry(y) Rx(x) Rz(z): forearm and wrist from where the hand lies. */
  static Euler yxz(Turn r) {
    return new Euler(
        degrees(r.x().y(), r.y().y()), asin(-r.z().y()), degrees(r.z().x(), r.z().z()));
  }

  private static double degrees(double sine, double cosine) {
    return Math.toDegrees(Math.atan2(sine, cosine));
  }

  private static double asin(double sine) {
    return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sine))));
  }
}
