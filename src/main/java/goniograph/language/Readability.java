package goniograph.language;

/**
 * Readability formulas for English prose, on counts, so that no formula depends on how words are
 * told apart. They miss most of what makes a sheet easy; see {@link TextMeasure}.
 */
public final class Readability {
  private static final double SMOG_SENTENCES = 30;

  private Readability() {}

  /** Flesch 1948, reading ease: the greater the easier, 100 is very easy. */
  public static double fleschReadingEase(int words, int sentences, int syllables) {
    return 206.835 - 1.015 * ratio(words, sentences) - 84.6 * ratio(syllables, words);
  }

  /** Kincaid 1975, United States school grade. */
  public static double fleschKincaidGrade(int words, int sentences, int syllables) {
    return 0.39 * ratio(words, sentences) + 11.8 * ratio(syllables, words) - 15.59;
  }

  /**
   * McLaughlin 1969, SMOG grade.
   *
   * @param polysyllables words of three or more syllables
   */
  public static double smog(int polysyllables, int sentences) {
    return 1.043 * Math.sqrt(SMOG_SENTENCES * ratio(polysyllables, sentences)) + 3.1291;
  }

  private static double ratio(int part, int whole) {
    return whole == 0 ? 0 : (double) part / whole;
  }
}
