package goniograph.register;

/**
 * The field of 32 elements, GF(2)[x] / (x^5 + x^2 + 1); x generates its 31 elements other than 0.
 * Elements are the numbers 0 to 31, their bits the coefficients.
 */
final class Galois32 {
  private static final int MODULUS = 0b100101;
  private static final int[] POWER = new int[62];
  private static final int[] LOGARITHM = new int[32];

  static {
    int element = 1;
    for (int i = 0; i < 31; i++) {
      POWER[i] = element;
      POWER[i + 31] = element;
      LOGARITHM[element] = i;
      element <<= 1;
      element = element > 31 ? element ^ MODULUS : element;
    }
  }

  private Galois32() {}

  /** The power x^n, n from 0 to 61. */
  static int power(int n) {
    return POWER[n];
  }

  static int times(int a, int b) {
    return a == 0 || b == 0 ? 0 : POWER[LOGARITHM[a] + LOGARITHM[b]];
  }

  /** The quotient a / b, b not 0. */
  static int over(int a, int b) {
    return a == 0 ? 0 : POWER[LOGARITHM[a] + 31 - LOGARITHM[b]];
  }
}
