package goniograph.language;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.language.WordFinder.Found;
import java.util.List;
import org.junit.jupiter.api.Test;

class WordFinderTest {
  private static final Words ENGLISH = Words.of(Language.ENGLISH);
  private static final Words ARABIC = Words.of(Language.of("ar").orElseThrow());

  @Test
  void aSideIsFoundButNotARightAngle() {
    WordFinder right = WordFinder.of(ENGLISH, ENGLISH.list("right"), ENGLISH.list("side.silent"));
    assertEquals(List.of(), right.find("All right: bend it to a right angle, bright."));
    assertEquals(List.of(new Found(5, 10, "right")), right.find("Your Right leg"));
  }

  @Test
  void phrasesAreFoundWhateverTheirApostrophe() {
    WordFinder breath = WordFinder.of(ENGLISH, ENGLISH.list("breath-holding"));
    assertEquals(1, breath.find("Do not HOLD your  breath.").size());
    assertEquals(1, breath.find("Don’t breathe out yet").size());
    assertEquals(List.of(), breath.find("Breathe."));
  }

  @Test
  void neverPrintedWordsAreWholeWords() {
    WordFinder never = WordFinder.of(ENGLISH, ENGLISH.list("never-print"));
    assertEquals(
        List.of("reps", "isometric"),
        never.find("10 reps of isometric work, settled").stream().map(Found::phrase).toList());
  }

  @Test
  void arabicWordsAreFoundBehindAPrefixAndWithVowelMarks() {
    WordFinder negation = WordFinder.of(ARABIC, ARABIC.list("negation"));
    assertEquals(1, negation.find("وَلا تحبس نفسك").size());
    WordFinder left = WordFinder.of(ARABIC, ARABIC.list("left"));
    assertEquals(List.of(new Found(4, 11, "يسرى")), left.find("يدك باليسرى"));
  }
}
