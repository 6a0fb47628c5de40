package goniograph.body;

/**
 * How the fingers of one hand are bent, in degrees; all four bend alike.
 *
 * @param knuckles bend of the knuckles (metacarpophalangeal joints)
 * @param middle bend of the middle joints (proximal interphalangeal)
 * @param ends bend of the end joints (distal interphalangeal)
 * @param thumb how far the thumb has come across the palm: 0 beside the hand, 45 opposite the
 *     fingertips, 90 over bent fingers
 */
public record Fingers(double knuckles, double middle, double ends, double thumb) {
  /** A flat hand, as on a table or a wall. */
  public static final Fingers FLAT = curl(0);

  /** A hand that does nothing. */
  public static final Fingers REST = curl(12);

  /** A thumb over bent fingers. */
  private static final double ACROSS = 90;

  private static final double FIST = 70;

  /** Half the length of the finger parts that lie round a thing, and half their thickness. */
  private static final double HALF_PART = .009;

  private static final double HALF_THICK = .006;

  /** Every finger joint bent alike, the thumb in keeping: 0 flat, 12 rest, 70 a fist. */
  public static Fingers curl(double degrees) {
    double closed = Math.max(0, Math.min(1, (degrees - 12) / (FIST - 12)));
    return new Fingers(degrees, degrees, degrees, ACROSS * closed);
  }

  /**
   * A grip that closes round a thing: each part of the finger lies along its surface, so it bends
   * by the angle under which the part is seen from the middle of the thing.
   *
   * @param radius of the thing held, in body heights
   */
  public static Fingers round(double radius) {
    double bend = 2 * Math.toDegrees(Math.atan(HALF_PART / (Math.max(0, radius) + HALF_THICK)));
    return curl(Math.min(FIST, bend));
  }

  /** The bend of the three joints one after another, in radians from the palm. */
  double[] turned() {
    double first = Math.toRadians(knuckles);
    double second = first + Math.toRadians(middle);
    return new double[] {first, second, second + Math.toRadians(ends)};
  }
}
