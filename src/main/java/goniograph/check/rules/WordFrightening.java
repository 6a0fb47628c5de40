package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Terms;
import goniograph.source.Span;
import java.util.stream.Stream;

/** A word that makes people afraid to move. */
public final class WordFrightening extends WordRule {
  private static final RulePage PAGE =
      RulePage.of(
          "word-frightening",
          "A word that speaks of damage or wear; a plain one is offered. Where the text denies it, as"
              + " \"does not mean damage\", it is silent.",
          "Fear of moving keeps people from what helps them.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          Example.in(
                  ExampleFiles.ADVICE, "Sore does not mean harmed.", "Sore joints are «worn out».")
              .insteadOf("Sore does not mean harmed."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  WordList list(String language, Checked checked) {
    return new WordList("frightening", language, checked, Terms::frightening);
  }

  @Override
  Stream<Finding> in(Said said, WordList list, Checked checked) {
    return list.asserted(said.text())
        .map(word -> found(said.at(word.from(), word.to()), word, list));
  }

  @Override
  Finding inStatement(Span at, String word, String mend) {
    return warning(at, "`" + word + "` frightens.", mend);
  }
}
