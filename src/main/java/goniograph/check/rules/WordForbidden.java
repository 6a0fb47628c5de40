package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.language.DoseNumbers;
import goniograph.language.WordFinder;
import goniograph.library.Terms;
import goniograph.source.Span;
import java.util.List;
import java.util.stream.Stream;

/** A word that patients do not know. */
public final class WordForbidden extends WordRule {
  private static final RulePage PAGE =
      RulePage.of(
          "word-forbidden",
          "A word of the trade, or one that the clinic's list forbids. An error in the steps and in"
              + " statements, a warning elsewhere. Beside a number of the dose that finding is enough;"
              + " \"set the chair\" is silent.",
          "A patient at home does the wrong thing, or nothing.",
          RulePage.PRACTICE,
          Acceptance.AUTHOR,
          Example.in(ExampleFiles.CHAIR_RISE, "Stand tall.", "«Engage» your seat muscles."),
          Example.in(
                  ExampleFiles.CHAIR_RISE,
                  "Set the chair down. Stand tall.",
                  "Rest between «sets». Stand tall.")
              .insteadOf("Stand tall."),
          Example.in(
              ExampleFiles.STATEMENTS, "Kneel on something soft.", "Kneel «prone» on a pad."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  WordList list(String language, Checked checked) {
    return new WordList("never-print", language, checked, Terms::forbidden);
  }

  @Override
  Stream<Finding> in(Said said, WordList list, Checked checked) {
    List<WordFinder.Found> found = list.find(said.text());
    return found.isEmpty() ? Stream.empty() : besideNone(found, said, list, checked);
  }

  private Stream<Finding> besideNone(
      List<WordFinder.Found> found, Said said, WordList list, Checked checked) {
    List<DoseNumbers.Found> numbers =
        DoseNumbers.of(checked.words(said.version().language())).find(said.text());
    return found.stream()
        .filter(word -> numbers.stream().noneMatch(number -> counted(number, word)))
        .map(word -> reasoned(finding(said, word, list), list, word));
  }

  private static boolean counted(DoseNumbers.Found number, WordFinder.Found word) {
    return number.from() <= word.from() && word.to() <= number.end();
  }

  private Finding finding(Said said, WordFinder.Found word, WordList list) {
    Span at = said.at(word.from(), word.to());
    String mend = list.mend(word.phrase());
    return said.in("do")
        ? error(at, what(word.phrase()), mend)
        : warning(at, what(word.phrase()), mend);
  }

  @Override
  Finding inStatement(Span at, String word, String mend) {
    return error(at, what(word), mend);
  }

  private static String what(String word) {
    return "`" + word + "` is not printed for patients.";
  }
}
