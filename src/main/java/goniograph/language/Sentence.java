package goniograph.language;

import com.ibm.icu.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One sentence of a text, by Unicode's text segmentation. The mark of a claim behind a full stop
 * belongs to the sentence before it.
 *
 * @param from its first character in the text
 * @param to behind its last character, white space left out
 */
public record Sentence(int from, int to) {
  private static final Pattern CLAIM_FIRST = Pattern.compile("^\\s*\\[[a-z0-9-]+\\]\\s*");

  /** The sentences of a text, in order. */
  public static List<Sentence> of(Language language, String text) {
    BreakIterator breaks = BreakIterator.getSentenceInstance(language.locale());
    breaks.setText(text);
    List<Sentence> sentences = new ArrayList<>();
    int from = breaks.first();
    for (int to = breaks.next(); to != BreakIterator.DONE; to = breaks.next()) {
      from = marked(text, from, to, sentences);
      add(text, from, to, sentences);
      from = to;
    }
    return List.copyOf(sentences);
  }

  /** Gives the claim mark that a sentence begins with to the one before; where the rest begins. */
  private static int marked(String text, int from, int to, List<Sentence> sentences) {
    var mark = CLAIM_FIRST.matcher(text.substring(from, to));
    if (sentences.isEmpty() || !mark.find()) {
      return from;
    }
    Sentence before = sentences.remove(sentences.size() - 1);
    sentences.add(new Sentence(before.from(), from + mark.group().stripTrailing().length()));
    return from + mark.end();
  }

  private static void add(String text, int from, int to, List<Sentence> sentences) {
    String sentence = text.substring(from, to).stripTrailing();
    int start = from + sentence.length() - sentence.stripLeading().length();
    if (!sentence.isBlank()) {
      sentences.add(new Sentence(start, from + sentence.length()));
    }
  }

  /** Its words. */
  public String in(String text) {
    return text.substring(from, to);
  }
}
