package goniograph.language;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadabilityTest {

  /**
   * Test values that the makers of words/flesch, words/flesch-kincaid, words/smog-formula,
   * words/gunning-fog and textstat print; for Fog two texts of zanotowane.pl/907/1771 with their
   * counts; for Kincaid a worked example with 12 sentences; for SMOG by table a worked example of
   * 22 sentences, and 95 and 64 long words in 30 sentences. The counts are the sources' own.
   */
  @ParameterizedTest
  @CsvSource({
    // formula, sentences, words, syllables, of three or more, result, within
    "FLESCH_READING_EASE, 1, 6, 6, 0, 116.145, 0.001",
    "FLESCH_READING_EASE, 1, 16, 22, 0, 74.27, 0.01",
    "FLESCH_READING_EASE, 1, 13, 26, 0, 24.44, 0.001",
    "FLESCH_READING_EASE, 1, 5, 7, 0, 83.32, 0.01",
    "FLESCH_KINCAID, 1, 13, 26, 0, 13.08, 0.01",
    "FLESCH_KINCAID, 1, 5, 7, 0, 2.88, 0.01",
    "FLESCH_KINCAID, 12, 194, 375, 0, 13.52, 0.01",
    "SMOG, 1, 1, 0, 0, 3.1291, 0.00001",
    "SMOG, 1, 4, 0, 4, 14.554593, 0.00001",
    "SMOG, 1, 5, 7, 1, 8.842, 0.001",
    "SMOG_TABLE, 22, 300, 0, 30, 9, 0",
    "SMOG_TABLE, 30, 300, 0, 95, 13, 0",
    "SMOG_TABLE, 30, 300, 0, 64, 11, 0",
    "FOG, 1, 13, 0, 0, 5.2, 0.001",
    "FOG, 1, 13, 0, 2, 11.353846, 0.00001",
    "FOG, 1, 69, 0, 13, 35.136, 0.001",
    "FOG, 3, 48, 0, 5, 10.567, 0.001",
    "FOG, 1, 5, 7, 1, 10.0, 0.001",
    "FERNANDEZ_HUERTA, 1, 5, 7, 1, 117.74, 0.01",
    "SZIGRISZT_PAZOS, 1, 5, 7, 1, 114.615, 0.01"
  })
  void agreesWithPublishedCounts(
      Readability formula,
      int sentences,
      int words,
      int syllables,
      int long3,
      double result,
      double within) {
    ReadingCounts counts = new ReadingCounts(words, sentences, syllables, long3, 0, 0, 0);
    assertEquals(result, formula.of(counts), within);
  }

  /** 100 words, 10 sentences, 150 syllables, worked out by hand from each formula. */
  @ParameterizedTest
  @CsvSource({
    "FLESCH_READING_EASE, 69.785",
    "FLESCH_KINCAID, 6.01",
    "AMSTAD, 82.25",
    "FERNANDEZ_HUERTA, 106.64",
    "KANDEL_MOLES_207, 86.45",
    "KANDEL_MOLES_209, 95.5",
    "DOUMA, 82.035",
    "OBORNEVA, 103.685",
    "FLESCH_VACCA, 114.0",
    "BROUWER, 74.5"
  })
  void agreesWithWorkByHand(Readability formula, double result) {
    assertEquals(result, formula.of(ReadingCounts.of(100, 10, 150)), 1e-9);
  }

  /**
   * textstat's tests alone: the sunglasses sentence, a rhyme and a German sentence, a Roman one.
   */
  @ParameterizedTest
  @CsvSource({
    // formula, sentences, words, syllables, three, one, over six letters, letters, result
    "LIX, 1, 5, 7, 1, 4, 1, 24, 25.0",
    "GUTIERREZ, 1, 5, 7, 1, 4, 1, 24, 46.89",
    "WIENER_SACHTEXT, 1, 14, 0, 0, 6, 4, 0, 3.770",
    "WIENER_SACHTEXT, 1, 16, 0, 6, 4, 7, 0, 13.913",
    "GULPEASE, 1, 18, 0, 0, 0, 0, 118, 40.111",
    "GULPEASE, 1, 5, 7, 1, 4, 1, 25, 99.0",
    "GULPEASE, 1, 18, 0, 0, 0, 0, 114, 42.333"
  })
  void agreesWithOtherSoftware(
      Readability formula,
      int sentences,
      int words,
      int syllables,
      int three,
      int one,
      int overSix,
      int letters,
      double result) {
    ReadingCounts counts =
        new ReadingCounts(words, sentences, syllables, three, one, overSix, letters);
    assertEquals(result, formula.of(counts), 0.01);
  }

  /**
   * The pages that print 65.967 and 62.162 imply 26.99 words a sentence, 1.889 syllables a word.
   */
  @Test
  void agreesWithASpanishTextFromItsRatios() {
    ReadingCounts counts = ReadingCounts.of(26_990, 1_000, 50_984);
    assertEquals(65.967, Readability.FERNANDEZ_HUERTA.of(counts), 0.05);
    assertEquals(62.162, Readability.SZIGRISZT_PAZOS.of(counts), 0.05);
  }

  /** McGraw's table of SMOG grades for 30 sentences, as far as it was seen. */
  @ParameterizedTest
  @CsvSource({
    "3, 6, 5",
    "7, 12, 6",
    "13, 20, 7",
    "21, 30, 8",
    "31, 42, 9",
    "43, 56, 10",
    "57, 72, 11",
    "73, 90, 12",
    "91, 110, 13",
    "111, 132, 14",
    "133, 156, 15",
    "157, 182, 16"
  })
  void smogTable(int from, int to, double grade) {
    for (int words = from; words <= to; words++) {
      ReadingCounts counts = new ReadingCounts(1000, 30, 0, words, 0, 0, 0);
      assertEquals(grade, Readability.SMOG_TABLE.of(counts), words + " long words");
    }
  }

  @Test
  void aLanguageWithoutAVerifiedFormulaHasNone() {
    for (String tag : List.of("pl", "pt", "ar", "ne", "vi", "hi", "zh")) {
      assertEquals(List.of(), Readability.of(Language.of(tag).orElseThrow()), tag);
    }
    assertEquals(5, Readability.of(Language.ENGLISH).size());
  }

  /** textstat's test sentence: 5 words, 7 syllables, 1 of three; counted from the text itself. */
  @Test
  void countsTheSentenceOfTextstat() {
    TextMeasure cool = english("Cool dogs wear da sunglasses.");
    assertEquals(new ReadingCounts(5, 1, 7, 1, 4, 1, 24), cool.counts());
    assertEquals(83.32, cool.score(Readability.FLESCH_READING_EASE).orElseThrow(), 0.01);
    assertEquals(2.88, cool.score(Readability.FLESCH_KINCAID).orElseThrow(), 0.01);
    assertEquals(8.842, cool.score(Readability.SMOG).orElseThrow(), 0.001);
  }

  /** quanteda's tests: about 103. words/flesch: 116.145 and 24.44, from the sentences behind. */
  @ParameterizedTest
  @CsvSource({
    "The cat in the hat ate breakfast., 103, 0.1",
    "The cat sat on the mat, 116.145, 0.001",
    "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature, 24.44, 0.001"
  })
  void countsPublishedSentences(String text, double ease, double within) {
    assertEquals(ease, english(text).score(Readability.FLESCH_READING_EASE).orElseThrow(), within);
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
            new TextMeasure.Measured(0, 0, 9, 2),
            new TextMeasure.Measured(0, 10, 49, 8),
            new TextMeasure.Measured(1, 0, 5, 1)),
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
    assertEquals(6, arabic.counts().words());
    assertTrue(arabic.score(Readability.FLESCH_KINCAID).isEmpty());
    assertTrue(english("").score(Readability.FLESCH_KINCAID).isEmpty());
  }

  private static TextMeasure english(String text) {
    return TextMeasure.of(Language.ENGLISH, List.of(text));
  }
}
