package goniograph.figure;

/**
 * A radius along a limb, by cubic Hermite pieces through given stations.
 *
 * @param at the stations, rising, from 0 to 1
 * @param radius the radius at each, in body heights
 */
record Profile(double[] at, double[] radius) {

  /** Pairs of station and radius. */
  static Profile of(double... pairs) {
    double[] at = new double[pairs.length / 2];
    double[] radius = new double[pairs.length / 2];
    for (int i = 0; i < at.length; i++) {
      at[i] = pairs[2 * i];
      radius[i] = pairs[2 * i + 1];
    }
    return new Profile(at, radius);
  }

  double radius(double t) {
    int i = 0;
    while (i < at.length - 2 && t > at[i + 1]) {
      i++;
    }
    double width = at[i + 1] - at[i];
    double s = Math.min(1, Math.max(0, (t - at[i]) / width));
    double s2 = s * s;
    double s3 = s2 * s;
    return (2 * s3 - 3 * s2 + 1) * radius[i]
        + (s3 - 2 * s2 + s) * width * slope(i)
        + (3 * s2 - 2 * s3) * radius[i + 1]
        + (s3 - s2) * width * slope(i + 1);
  }

  private double slope(int i) {
    int before = Math.max(0, i - 1);
    int after = Math.min(at.length - 1, i + 1);
    return (radius[after] - radius[before]) / (at[after] - at[before]);
  }
}
