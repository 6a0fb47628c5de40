package goniograph.pose;

import java.util.function.Function;

/**
 * Damped least squares (Levenberg 1944, Marquardt 1963) for a handful of unknowns, with a numeric
 * Jacobian: a pure function of its arguments.
 */
final class LeastSquares {
  private static final double STEP = 1e-5;
  private static final double CLOSE = 1e-8;
  private static final int ROUNDS = 25;

  private final Function<double[], double[]> residuals;

  private LeastSquares(Function<double[], double[]> residuals) {
    this.residuals = residuals;
  }

  /**
   * The unknowns, from all zeros on, that make the sum of squared residuals smallest.
   *
   * @param residuals as many as one likes, always the same number, smooth in the unknowns
   */
  static double[] solve(int unknowns, Function<double[], double[]> residuals) {
    return new LeastSquares(residuals).solve(new double[unknowns]);
  }

  private double[] solve(double[] start) {
    double[] at = start;
    double[] r = residuals.apply(at);
    double damping = 1e-4;
    for (int i = 0; i < ROUNDS && damping < 1e6; i++) {
      double[] step = step(jacobian(at), r, damping);
      double[] next = plus(at, step);
      double[] nextR = residuals.apply(next);
      if (square(nextR) > square(r)) {
        damping *= 10;
        continue;
      }
      at = next;
      r = nextR;
      damping /= 10;
      if (Math.sqrt(square(step)) < CLOSE) {
        break;
      }
    }
    return at;
  }

  /** By central differences, which treat left and right alike. */
  private double[][] jacobian(double[] at) {
    double[][] columns = new double[at.length][];
    for (int j = 0; j < at.length; j++) {
      double[] ahead = residuals.apply(beside(at, j, STEP));
      double[] behind = residuals.apply(beside(at, j, -STEP));
      for (int i = 0; i < ahead.length; i++) {
        ahead[i] = (ahead[i] - behind[i]) / (2 * STEP);
      }
      columns[j] = ahead;
    }
    return columns;
  }

  private static double[] beside(double[] at, int j, double step) {
    double[] beside = at.clone();
    beside[j] += step;
    return beside;
  }

  private static double[] step(double[][] columns, double[] r, double damping) {
    int n = columns.length;
    double[][] a = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        a[i][j] = dot(columns[i], columns[j]);
      }
      a[i][i] += damping * (a[i][i] + 1e-9);
      a[i][n] = -dot(columns[i], r);
    }
    return eliminated(a);
  }

  /** Gauss's elimination; the damped normal matrix is positive definite and needs no pivot. */
  private static double[] eliminated(double[][] a) {
    int n = a.length;
    for (int k = 0; k < n; k++) {
      for (int i = k + 1; i < n; i++) {
        double factor = a[i][k] / a[k][k];
        for (int j = k; j <= n; j++) {
          a[i][j] -= factor * a[k][j];
        }
      }
    }
    double[] x = new double[n];
    for (int i = n - 1; i >= 0; i--) {
      double rest = a[i][n];
      for (int j = i + 1; j < n; j++) {
        rest -= a[i][j] * x[j];
      }
      x[i] = rest / a[i][i];
    }
    return x;
  }

  private static double[] plus(double[] a, double[] b) {
    double[] sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += b[i];
    }
    return sum;
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double square(double[] a) {
    return dot(a, a);
  }
}
