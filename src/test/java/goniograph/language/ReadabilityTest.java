package goniograph.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadabilityTest {

  /** Published test values of words/flesch and textstat; the second row worked out by hand. */
  @ParameterizedTest
  @CsvSource({
    "1, 6, 6, 116.145, 0.001",
    "10, 100, 150, 69.785, 0.001",
    "1, 16, 22, 74.27, 0.01",
    "1, 13, 26, 24.44, 0.001",
    "1, 5, 7, 83.32, 0.01"
  })
  void fleschReadingEase(int sentences, int words, int syllables, double ease, double within) {
    assertEquals(ease, Readability.fleschReadingEase(words, sentences, syllables), within);
  }

  /** words/flesch-kincaid, textstat, a published worked example (12, 194, 375), and by hand. */
  @ParameterizedTest
  @CsvSource({"1, 13, 26, 13.08", "1, 5, 7, 2.88", "12, 194, 375, 13.52", "10, 100, 150, 6.01"})
  void fleschKincaid(int sentences, int words, int syllables, double grade) {
    assertEquals(grade, Readability.fleschKincaidGrade(words, sentences, syllables), 0.01);
  }

  /** words/smog-formula, and textstat for (1, 1). */
  @ParameterizedTest
  @CsvSource({"0, 1, 3.1291", "4, 1, 14.554593", "1, 1, 8.842"})
  void smog(int polysyllables, int sentences, double grade) {
    assertEquals(grade, Readability.smog(polysyllables, sentences), 0.001);
  }

  /** textstat's test sentence: 5 words, 7 syllables, 1 of three; counted from the text itself. */
  @Test
  void countsTheSentenceOfTextstat() {
    TextMeasure cool = english("Cool dogs wear da sunglasses.");
    assertEquals(5, cool.words());
    assertEquals(7, cool.syllables());
    assertEquals(1, cool.polysyllables());
    assertEquals(83.32, cool.readingEase().orElseThrow(), 0.01);
    assertEquals(2.88, cool.grade().orElseThrow(), 0.01);
    assertEquals(8.842, cool.smog().orElseThrow(), 0.001);
  }

  /** quanteda's tests: about 103. words/flesch: 116.145 and 24.44, from the sentences behind. */
  @ParameterizedTest
  @CsvSource({
    "The cat in the hat ate breakfast., 103, 0.1",
    "The cat sat on the mat, 116.145, 0.001",
    "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature, 24.44, 0.001"
  })
  void countsPublishedSentences(String text, double ease, double within) {
    assertEquals(ease, english(text).readingEase().orElseThrow(), within);
  }

  /** Syllables as pronounced in the CMU dictionary. */
  @ParameterizedTest
  @CsvSource({
    "shoulder, 2",
    "muscle, 2",
    "ankles, 2",
    "exercise, 3",
    "slowly, 2",
    "carefully, 3",
    "lifted, 2",
    "pushed, 1",
    "easier, 3",
    "seeing, 2",
    "breathe, 1",
    "clothes, 1",
    "table, 2",
    "people, 2",
    "gently, 2",
    "therapist, 3",
    "movement, 2",
    "hundred, 2",
    "places, 2",
    "area, 3",
    "radio, 3",
    "special, 2",
    "quiet, 2",
    "player, 2",
    "eyes, 1",
    "toes, 1",
    "isn't, 2",
    "don't, 1",
    "minute, 2",
    "balance, 2",
    "video, 3",
    "usual, 3",
    "whole, 1",
    "safely, 2"
  })
  void syllables(String word, int count) {
    assertEquals(count, Syllables.of(word), word);
  }

  @Test
  void sentencesKeepTheirPlaces() {
    TextMeasure text =
        TextMeasure.of(
            Language.ENGLISH,
            List.of("Sit tall. Lean until your nose is over your toes.", "Stand"));
    assertEquals(
        List.of(
            new TextMeasure.Sentence(0, 0, 9, 2),
            new TextMeasure.Sentence(0, 10, 49, 8),
            new TextMeasure.Sentence(1, 0, 5, 1)),
        text.sentences());
    assertEquals(8, text.longestSentence());
    assertEquals(11 / 3.0, text.meanSentence(), 1e-9);
  }

  @Test
  void otherLanguagesAreMeasuredByLengthOnly() {
    TextMeasure arabic =
        TextMeasure.of(
            Language.of("ar").orElseThrow(), List.of("اجلس مستقيما. ضع قدميك على الأرض."));
    assertEquals(2, arabic.sentences().size());
    assertEquals(6, arabic.words());
    assertTrue(arabic.readingEase().isEmpty());
    assertTrue(english("").readingEase().isEmpty());
  }

  private static TextMeasure english(String text) {
    return TextMeasure.of(Language.ENGLISH, List.of(text));
  }
}
