package goniograph.language;

import java.util.Optional;

/**
 * A phrase filled in.
 *
 * @param text the words, or "" if there is a problem
 * @param problem why there are no words
 */
public record Phrased(String text, Optional<PhraseProblem> problem) {

  static Phrased of(String text) {
    return new Phrased(text, Optional.empty());
  }

  static Phrased failed(PhraseProblem problem) {
    return new Phrased("", Optional.of(problem));
  }
}
