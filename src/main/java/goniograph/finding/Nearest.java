package goniograph.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The word that was probably meant. */
public final class Nearest {
  private Nearest() {}

  /**
   * The known word with the fewest letters to insert, drop, change or swap (the optimal string
   * alignment distance of Damerau 1964), the first of several. Empty if even that differs in more
   * than a third of its letters, and in more than two.
   */
  public static Optional<String> of(String typed, Collection<String> known) {
    return known.stream()
        .min(Comparator.comparingInt(word -> distance(typed, word)))
        .filter(word -> distance(typed, word) <= Math.max(2, typed.length() / 3))
        .filter(word -> distance(typed, word) < Math.max(typed.length(), word.length()));
  }

  /** The words {@code ; did you mean `near`?}, or nothing where no word is near. */
  public static String hint(String typed, Collection<String> known) {
    return of(typed, known).map(word -> "; did you mean `" + word + "`?").orElse("");
  }

  static int distance(String a, String b) {
    int[][] steps = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        steps[i][j] = i == 0 || j == 0 ? i + j : cheapest(steps, a, b, i, j);
      }
    }
    return steps[a.length()][b.length()];
  }

  private static int cheapest(int[][] steps, String a, String b, int i, int j) {
    boolean same = a.charAt(i - 1) == b.charAt(j - 1);
    int cost = Math.min(steps[i - 1][j], steps[i][j - 1]) + 1;
    cost = Math.min(cost, steps[i - 1][j - 1] + (same ? 0 : 1));
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(cost, steps[i - 2][j - 2] + 1) : cost;
  }
}
