package goniograph.language;

import com.ibm.icu.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a text measures. Sentences and words are those of Unicode's text segmentation by ICU; a word
 * has a letter or a digit in it. Syllables are counted in English only, and only there do the
 * formulas hold: in other languages they give nothing.
 *
 * @param sentences the sentences, in order
 * @param words words in all
 * @param syllables syllables in all; 0 where they are not counted
 * @param polysyllables words of three or more syllables; 0 where they are not counted
 * @param english whether the formulas hold
 */
public record TextMeasure(
    List<Sentence> sentences, int words, int syllables, int polysyllables, boolean english) {
  private static final int POLYSYLLABLE = 3;

  /**
   * One sentence.
   *
   * @param piece index of the piece it stands in
   * @param from its first character in the piece
   * @param to behind its last character, white space left out
   * @param words how many words
   */
  public record Sentence(int piece, int from, int to, int words) {}

  public TextMeasure {
    sentences = List.copyOf(sentences);
  }

  /** Measures pieces of text; each piece ends a sentence, with a full stop or without. */
  public static TextMeasure of(Language language, List<String> pieces) {
    boolean english = language.locale().getLanguage().equals("en");
    List<Sentence> sentences = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (int piece = 0; piece < pieces.size(); piece++) {
      measure(language, piece, pieces.get(piece), sentences, words);
    }
    List<Integer> syllables = english ? words.stream().map(Syllables::of).toList() : List.of();
    return new TextMeasure(
        sentences,
        words.size(),
        syllables.stream().mapToInt(n -> n).sum(),
        (int) syllables.stream().filter(n -> n >= POLYSYLLABLE).count(),
        english);
  }

  /** Mean words a sentence; 0 for no text. */
  public double meanSentence() {
    return sentences.isEmpty() ? 0 : (double) words / sentences.size();
  }

  /** Words of the longest sentence. */
  public int longestSentence() {
    return sentences.stream().mapToInt(Sentence::words).max().orElse(0);
  }

  /** Flesch reading ease, of English. */
  public OptionalDouble readingEase() {
    return scored()
        ? OptionalDouble.of(Readability.fleschReadingEase(words, sentences.size(), syllables))
        : OptionalDouble.empty();
  }

  /** Flesch-Kincaid grade, of English. */
  public OptionalDouble grade() {
    return scored()
        ? OptionalDouble.of(Readability.fleschKincaidGrade(words, sentences.size(), syllables))
        : OptionalDouble.empty();
  }

  /** SMOG grade, of English; made for thirty sentences and more. */
  public OptionalDouble smog() {
    return scored()
        ? OptionalDouble.of(Readability.smog(polysyllables, sentences.size()))
        : OptionalDouble.empty();
  }

  private boolean scored() {
    return english && words > 0;
  }

  private static void measure(
      Language language, int piece, String text, List<Sentence> sentences, List<String> words) {
    BreakIterator breaks = BreakIterator.getSentenceInstance(language.locale());
    breaks.setText(text);
    for (int from = breaks.first(), to = breaks.next();
        to != BreakIterator.DONE;
        from = to, to = breaks.next()) {
      String sentence = text.substring(from, to).stripTrailing();
      List<String> own = words(language, sentence);
      if (!own.isEmpty()) {
        int start = from + sentence.length() - sentence.stripLeading().length();
        sentences.add(new Sentence(piece, start, from + sentence.length(), own.size()));
        words.addAll(own);
      }
    }
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
