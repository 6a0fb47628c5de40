package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Terms;
import goniograph.source.Span;
import java.util.stream.Stream;

/** A long or learned word with a plain one to use. */
public final class WordHard extends WordRule {
  private static final RulePage PAGE =
      RulePage.of(
          "word-hard",
          "A long or learned word of the checker's list or the clinic's; the plain one is named.",
          "Many readers know the plain word only.",
          RulePage.PRACTICE,
          Acceptance.AUTHOR,
          Example.in(
              ExampleFiles.HEEL_TO_TOE,
              "Look straight ahead.",
              "«Maintain» your gaze straight ahead."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  WordList list(String language, Checked checked) {
    return new WordList("hard", language, checked, Terms::hard);
  }

  @Override
  Stream<Finding> in(Said said, WordList list, Checked checked) {
    return list.find(said.text()).stream()
        .map(word -> found(said.at(word.from(), word.to()), word, list));
  }

  @Override
  Finding inStatement(Span at, String word, String mend) {
    return warning(at, "`" + word + "` is a hard word.", mend);
  }
}
