package goniograph.body;

/**
 * How far a freedom goes.
 *
 * @param low the smallest value, in the freedom's unit
 * @param high the largest value
 * @param source where the two numbers come from, in words for a finding
 */
public record MotionRange(double low, double high, String source) {
  /** True where a value lies inside, the ends included; a hair's breadth outside still does. */
  public boolean holds(double value) {
    return value >= low - 1e-6 && value <= high + 1e-6;
  }
}
