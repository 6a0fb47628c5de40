package goniograph.pose;

import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import java.util.Collection;
import java.util.function.Consumer;

/** Findings about words of a pose file that cannot be understood. */
record Complaint(Consumer<Finding> findings) {
  private static final String WHY =
      "A word that is not understood would be left out of the drawing without a word.";

  /** A word that is none of those known in its place. */
  void unknown(String rule, Phrase word, String what, Collection<String> known) {
    String mend =
        Nearest.of(word.text(), known)
            .map(near -> "Write `" + near + "`.")
            .orElse("Known here: `" + String.join("`, `", known) + "`.");
    say(
        rule,
        word,
        "`" + word.text() + "` is not " + what + Nearest.hint(word.text(), known) + ".",
        mend);
  }

  void say(String rule, Phrase at, String what, String mend) {
    String sentence = what.endsWith("?.") ? what.substring(0, what.length() - 1) : what;
    findings.accept(Finding.error(rule, at.at(), sentence, WHY, mend));
  }
}
