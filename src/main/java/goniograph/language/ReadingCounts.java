package goniograph.language;

/**
 * What a readability formula looks at, as counts, so that no formula depends on how words are told
 * apart.
 *
 * @param words words
 * @param sentences sentences
 * @param syllables syllables in all
 * @param polysyllables words of three syllables and more
 * @param monosyllables words of one syllable
 * @param longWords words of more than six letters
 * @param letters letters in all
 */
public record ReadingCounts(
    int words,
    int sentences,
    int syllables,
    int polysyllables,
    int monosyllables,
    int longWords,
    int letters) {

  /** Counts of which only words, sentences and syllables matter. */
  public static ReadingCounts of(int words, int sentences, int syllables) {
    return new ReadingCounts(words, sentences, syllables, 0, 0, 0, 0);
  }

  double wordsPerSentence() {
    return ratio(words, sentences);
  }

  double syllablesPerWord() {
    return ratio(syllables, words);
  }

  double percent(int part) {
    return 100 * ratio(part, words);
  }

  static double ratio(int part, int whole) {
    return whole == 0 ? 0 : (double) part / whole;
  }
}
