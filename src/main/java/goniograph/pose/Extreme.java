package goniograph.pose;

/** The smallest and the largest value of a freedom over the whole movement. */
public record Extreme(double low, double high) {
  Extreme with(double value) {
    return new Extreme(Math.min(low, value), Math.max(high, value));
  }
}
