package goniograph.language;

import com.ibm.icu.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;

/**
 * What a text measures. Sentences and words are those of Unicode's text segmentation by ICU; a word
 * has a letter or a digit in it. Syllables are counted in English only; where they are not they are
 * 0, and a formula that needs them gives nothing. They are counted by spelling, with the weakness
 * that {@link Syllables} names.
 *
 * @param language the language
 * @param sentences the sentences, in order
 * @param counts the counts of the whole
 */
public record TextMeasure(Language language, List<Measured> sentences, ReadingCounts counts) {
  private static final int POLYSYLLABLE = 3;
  private static final int LONG_WORD = 6;

  /**
   * One sentence.
   *
   * @param piece index of the piece it stands in
   * @param from its first character in the piece
   * @param to behind its last character, white space left out
   * @param words how many words
   */
  public record Measured(int piece, int from, int to, int words) {}

  public TextMeasure {
    sentences = List.copyOf(sentences);
  }

  /** Measures pieces of text; each piece ends a sentence, with a full stop or without. */
  public static TextMeasure of(Language language, List<String> pieces) {
    List<Measured> sentences = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (int piece = 0; piece < pieces.size(); piece++) {
      measure(language, piece, pieces.get(piece), sentences, words);
    }
    return new TextMeasure(language, sentences, counts(language, sentences.size(), words));
  }

  private static ReadingCounts counts(Language language, int sentences, List<String> words) {
    List<Integer> syllables =
        english(language) ? words.stream().map(Syllables::of).toList() : List.of();
    List<Integer> letters = words.stream().map(TextMeasure::letters).toList();
    return new ReadingCounts(
        words.size(),
        sentences,
        sum(syllables),
        number(syllables, n -> n >= POLYSYLLABLE),
        number(syllables, n -> n == 1),
        number(letters, n -> n > LONG_WORD),
        sum(letters));
  }

  private static boolean english(Language language) {
    return language.locale().getLanguage().equals("en");
  }

  private static int letters(String word) {
    return (int) word.codePoints().filter(Character::isLetterOrDigit).count();
  }

  private static int sum(List<Integer> numbers) {
    return numbers.stream().mapToInt(n -> n).sum();
  }

  private static int number(List<Integer> numbers, IntPredicate which) {
    return (int) numbers.stream().mapToInt(n -> n).filter(which).count();
  }

  /** Mean words a sentence; 0 for no text. */
  public double meanSentence() {
    return counts.wordsPerSentence();
  }

  /** Words of the longest sentence. */
  public int longestSentence() {
    return sentences.stream().mapToInt(Measured::words).max().orElse(0);
  }

  /** The result of a formula; nothing without words or where its syllables are not counted. */
  public OptionalDouble score(Readability formula) {
    boolean countable = !formula.needsSyllables() || english(language);
    return countable && counts.words() > 0
        ? OptionalDouble.of(formula.of(counts))
        : OptionalDouble.empty();
  }

  private static void measure(
      Language language, int piece, String text, List<Measured> sentences, List<String> words) {
    for (Sentence one : Sentence.of(language, text)) {
      List<String> own = words(language, plain(one.in(text)));
      if (!own.isEmpty()) {
        sentences.add(new Measured(piece, one.from(), one.to(), own.size()));
        words.addAll(own);
      }
    }
  }

  /** Without marks of claims, which are not printed; a slot counts as one short word. */
  private static String plain(String sentence) {
    return sentence.replaceAll("\\[[a-z0-9-]+\\]", " ").replaceAll("\\{[^{}]*}", "x");
  }

  private static List<String> words(Language language, String sentence) {
    BreakIterator breaks = BreakIterator.getWordInstance(language.locale());
    breaks.setText(sentence);
    List<String> words = new ArrayList<>();
    for (int from = breaks.first(), to = breaks.next();
        to != BreakIterator.DONE;
        from = to, to = breaks.next()) {
      if (breaks.getRuleStatus() >= BreakIterator.WORD_NUMBER) {
        words.add(sentence.substring(from, to));
      }
    }
    return words;
  }
}
