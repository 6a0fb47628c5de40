package goniograph.pose;

import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Consumer;

/** Findings about words of a pose file that cannot be understood. */
record Complaint(Consumer<Finding> findings) {
  private static final String WHY =
      "A word that is not understood would be left out of the drawing without a word.";

  /** A word that is none of those known in its place. */
  void unknown(String rule, Phrase word, String what, Collection<String> known) {
    unknown(rule, word, what, known, "Known here: `" + String.join("`, `", known) + "`.");
  }

  /**
   * A word that is none of those known in its place, where they are too many to be listed.
   *
   * @param forms what can stand there, in a sentence
   */
  void unknown(String rule, Phrase word, String what, Collection<String> known, String forms) {
    Optional<String> near = Nearest.of(word.text(), known);
    String hint = near.isPresent() ? Nearest.hint(word.text(), known) : ".";
    say(
        rule,
        word,
        "`" + word.text() + "` is not " + what + hint,
        near.map(meant -> "Write `" + meant + "`.").orElse(forms));
  }

  void say(String rule, Phrase at, String what, String mend) {
    say(rule, at, what, WHY, mend);
  }

  void say(String rule, Phrase at, String what, String why, String mend) {
    findings.accept(Finding.error(rule, at.at(), what, why, mend));
  }
}
