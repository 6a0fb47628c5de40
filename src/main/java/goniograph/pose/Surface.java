package goniograph.pose;

import goniograph.body.Vec;

/**
 * A flat rectangle to be touched: a worktop or a wall.
 *
 * @param low its corner with the smallest coordinates
 * @param high its corner with the largest
 * @param normal out of it, of length 1, along an axis of the world
 */
record Surface(Vec low, Vec high, Vec normal) {

  /** True where it lies flat. */
  boolean level() {
    return normal.y() > .5;
  }

  /** True where a point is straight above the rectangle. */
  boolean below(Vec point) {
    return point.y() >= high.y()
        && point.x() >= low.x()
        && point.x() <= high.x()
        && point.z() >= low.z()
        && point.z() <= high.z();
  }

  /** The point of the surface nearest to another, at least {@code inset} from its edges. */
  Vec nearest(Vec point, double inset) {
    return new Vec(
        within(point.x(), low.x(), high.x(), inset),
        within(point.y(), low.y(), high.y(), inset),
        within(point.z(), low.z(), high.z(), inset));
  }

  private static double within(double value, double low, double high, double inset) {
    if (high - low <= 2 * inset) {
      return (low + high) / 2;
    }
    return Math.max(low + inset, Math.min(high - inset, value));
  }
}
