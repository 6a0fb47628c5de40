package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import goniograph.library.Terms;
import goniograph.source.Span;
import java.util.List;
import java.util.stream.Stream;

/** A phrase that readers take in more than one way. */
public final class WordAmbiguous extends WordRule {
  private static final RulePage PAGE =
      RulePage.of(
          "word-ambiguous",
          "A phrase that readers take in more than one way; the plain words to use are named. An"
              + " error for `bi-weekly` and its like, and for `alternate` beside `every other day`,"
              + " a warning otherwise.",
          "\"Alternate\" is every other leg or every other day; \"as tolerated\" is nothing at all,"
              + " or into agony.",
          RulePage.PRACTICE,
          Acceptance.AUTHOR,
          Example.in(ExampleFiles.HEEL_TO_TOE, "Then do it again.", "Do it again «as tolerated»."),
          Example.in(
              ExampleFiles.HEEL_TO_TOE, "Then do it again.", "Then «alternate», every other day."));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  WordList list(String language, Checked checked) {
    return new WordList("ambiguous", language, checked, Terms::ambiguous);
  }

  @Override
  Stream<Finding> in(Said said, WordList list, Checked checked) {
    List<WordFinder.Found> found = list.find(said.text());
    if (found.isEmpty()) {
      return Stream.empty();
    }
    Words words = checked.words(said.version().language());
    boolean day = has(words, "ambiguous.day", said.text());
    boolean turn = has(words, "ambiguous.turn", said.text());
    return found.stream()
        .filter(word -> !(turn && day && words.list("ambiguous.day").contains(word.phrase())))
        .map(word -> reasoned(finding(said, word, list, words, day), list, word));
  }

  private static boolean has(Words words, String list, String text) {
    return !words.finder(list).find(text).isEmpty();
  }

  private Finding finding(
      Said said, WordFinder.Found word, WordList list, Words words, boolean day) {
    boolean turn = words.list("ambiguous.turn").contains(word.phrase());
    boolean grave = words.list("ambiguous.error").contains(word.phrase()) || (turn && day);
    Span at = said.at(word.from(), word.to());
    return grave
        ? error(at, what(word.phrase()), list.mend(word.phrase()))
        : warning(at, what(word.phrase()), list.mend(word.phrase()));
  }

  @Override
  Finding inStatement(Span at, String word, String mend) {
    return error(at, what(word), mend);
  }

  private static String what(String word) {
    return "`" + word + "` is read in more than one way.";
  }
}
