package goniograph.language;

import static goniograph.language.ReadingCounts.ratio;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Published readability formulas whose coefficients were verified, on counts. They were made for
 * prose and miss most of what makes a sheet easy; see {@link TextMeasure}. There is none for Hindi,
 * Nepali, Chinese, Polish, Portuguese or Vietnamese here: what exists could not be verified.
 */
public enum Readability {
  /** Flesch 1948: the greater the easier, 100 is very easy. */
  FLESCH_READING_EASE(
      "en",
      "Flesch 1948, reading ease",
      Proof.PUBLISHED,
      true,
      c -> 206.835 - 1.015 * c.wordsPerSentence() - 84.6 * c.syllablesPerWord()),
  /** Kincaid 1975: school grade in the United States. */
  FLESCH_KINCAID(
      "en",
      "Kincaid 1975, grade",
      Proof.PUBLISHED,
      true,
      c -> 0.39 * c.wordsPerSentence() + 11.8 * c.syllablesPerWord() - 15.59),
  /** McLaughlin 1969: school grade; made for thirty sentences. */
  SMOG(
      "en",
      "McLaughlin 1969, SMOG grade",
      Proof.PUBLISHED,
      true,
      c -> 1.043 * Math.sqrt(30 * ratio(c.polysyllables(), c.sentences())) + 3.1291),
  /** McGraw's table for SMOG: three more than the root of the long words in thirty sentences. */
  SMOG_TABLE(
      "en",
      "McGraw, table of SMOG grades",
      Proof.PUBLISHED,
      true,
      c -> 3 + Math.rint(Math.sqrt(Math.rint(30 * ratio(c.polysyllables(), c.sentences()))))),
  /** Gunning: school grade. */
  FOG(
      "en",
      "Gunning, Fog index",
      Proof.PUBLISHED,
      true,
      c -> 0.4 * (c.wordsPerSentence() + c.percent(c.polysyllables()))),
  /** Björnsson 1968: below 25 very easy, 55 and more very hard. */
  LIX(
      "sv",
      "Björnsson, LIX",
      Proof.SOFTWARE,
      false,
      c -> c.wordsPerSentence() + c.percent(c.longWords())),
  /** Fernández Huerta 1959. */
  FERNANDEZ_HUERTA(
      "es",
      "Fernández Huerta",
      Proof.SOFTWARE,
      true,
      c -> 206.84 - 60 * c.syllablesPerWord() - 1.02 * c.wordsPerSentence()),
  /** Szigriszt Pazos 1993; 206.835, where some software has 206.84. */
  SZIGRISZT_PAZOS(
      "es",
      "Szigriszt Pazos",
      Proof.SOFTWARE,
      true,
      c -> 206.835 - 62.3 * c.syllablesPerWord() - c.wordsPerSentence()),
  /** Gutiérrez de Polini 1972. */
  GUTIERREZ(
      "es",
      "Gutiérrez de Polini",
      Proof.SOFTWARE,
      false,
      c -> 95.2 - 9.7 * ratio(c.letters(), c.words()) - 0.35 * c.wordsPerSentence()),
  /** Lucisano and Piemontese 1988: 80, 60 and 40 for primary, middle and high school. */
  GULPEASE(
      "it",
      "Lucisano and Piemontese 1988, Gulpease",
      Proof.SOFTWARE,
      false,
      c -> 89 + ratio(300 * c.sentences() - 10 * c.letters(), c.words())),
  /** Vacca 1972. */
  FLESCH_VACCA(
      "it",
      "Flesch-Vacca",
      Proof.WORKED_OUT,
      true,
      c -> 217 - 1.3 * c.wordsPerSentence() - 60 * c.syllablesPerWord()),
  /** Amstad 1978. */
  AMSTAD(
      "de",
      "Amstad",
      Proof.WORKED_OUT,
      true,
      c -> 180 - c.wordsPerSentence() - 58.5 * c.syllablesPerWord()),
  /** Bamberger and Vanecek 1984, the first Wiener Sachtextformel: school grade. */
  WIENER_SACHTEXT(
      "de",
      "Bamberger and Vanecek, Wiener Sachtextformel 1",
      Proof.SOFTWARE,
      true,
      c ->
          0.1935 * c.percent(c.polysyllables())
              + 0.1672 * c.wordsPerSentence()
              + 0.1297 * c.percent(c.longWords())
              - 0.0327 * c.percent(c.monosyllables())
              - 0.875),
  /** Kandel and Moles 1958, the variant with 207. */
  KANDEL_MOLES_207(
      "fr",
      "Kandel and Moles, variant 207",
      Proof.WORKED_OUT,
      true,
      c -> 207 - 1.015 * c.wordsPerSentence() - 73.6 * c.syllablesPerWord()),
  /** Kandel and Moles 1958, the variant with 209. */
  KANDEL_MOLES_209(
      "fr",
      "Kandel and Moles, variant 209",
      Proof.WORKED_OUT,
      true,
      c -> 209 - 1.15 * c.wordsPerSentence() - 68 * c.syllablesPerWord()),
  /** Douma 1960. */
  DOUMA(
      "nl",
      "Douma",
      Proof.WORKED_OUT,
      true,
      c -> 206.835 - 0.93 * c.wordsPerSentence() - 77 * c.syllablesPerWord()),
  /** Brouwer 1963. */
  BROUWER(
      "nl",
      "Brouwer",
      Proof.WORKED_OUT,
      true,
      c -> 195 - 2 * c.wordsPerSentence() - 67 * c.syllablesPerWord()),
  /** Oborneva 2006. */
  OBORNEVA(
      "ru",
      "Oborneva",
      Proof.WORKED_OUT,
      true,
      c -> 206.835 - 1.3 * c.wordsPerSentence() - 60.1 * c.syllablesPerWord());

  /** What the result of a formula could be held against. */
  public enum Proof {
    /** Worked examples printed by others than the makers of software. */
    PUBLISHED("worked examples in print"),
    /** Test values of other software: agreement proves agreement with that software. */
    SOFTWARE("test values of other software alone"),
    /** Nothing but the formula itself. */
    WORKED_OUT("the formula itself alone");

    private final String words;

    Proof(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  private final String language;
  private final String author;
  private final Proof proof;
  private final boolean needsSyllables;
  private final ToDoubleFunction<ReadingCounts> formula;

  Readability(
      String language,
      String author,
      Proof proof,
      boolean needsSyllables,
      ToDoubleFunction<ReadingCounts> formula) {
    this.language = language;
    this.author = author;
    this.proof = proof;
    this.needsSyllables = needsSyllables;
    this.formula = formula;
  }

  /** The formulas made for a language, none where no formula could be verified. */
  public static List<Readability> of(Language language) {
    String wanted = language.locale().getLanguage();
    return Arrays.stream(values()).filter(one -> one.language.equals(wanted)).toList();
  }

  /** Its author, year and name. */
  public String author() {
    return author;
  }

  /** What its results could be held against. */
  public Proof proof() {
    return proof;
  }

  /** Whether it counts syllables, which is done in English only. */
  public boolean needsSyllables() {
    return needsSyllables;
  }

  /** Its result. */
  public double of(ReadingCounts counts) {
    return formula.applyAsDouble(counts);
  }
}
