package goniograph.check.rules;

import goniograph.check.Checked;
import goniograph.language.Negation;
import goniograph.language.WordFinder;
import goniograph.language.Words;
import goniograph.library.Terms;
import goniograph.matter.Located;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** One list of words to avoid in a language: the checker's own, and the clinic's on top. */
final class WordList {
  private final SortedMap<String, String> say;
  private final Map<String, String> why = new TreeMap<>();
  private final WordFinder finder;
  private final Negation negation;

  /**
   * A list.
   *
   * @param name its name among the checker's own lists
   * @param clinic the same of the clinic's terms
   */
  WordList(
      String name, String language, Checked checked, Function<Terms, List<Terms.Avoided>> clinic) {
    Words words = checked.words(language);
    say = new TreeMap<>(words.instead(name));
    checked.library().terms(language).ifPresent(terms -> take(terms, clinic.apply(terms)));
    finder = WordFinder.of(words, List.copyOf(say.keySet()), words.list(name + ".silent"));
    negation = Negation.of(words);
  }

  private void take(Terms terms, List<Terms.Avoided> avoided) {
    terms.accepted().forEach(word -> say.remove(word.value()));
    for (Terms.Avoided one : avoided) {
      String word = one.word().value();
      say.put(word, one.say().map(Located::value).orElse(""));
      one.why().ifPresent(reason -> why.put(word, reason.value()));
    }
  }

  /** All words of the list in a text. */
  List<WordFinder.Found> find(String text) {
    return finder.find(text);
  }

  /** The same without those that the text denies. */
  Stream<WordFinder.Found> asserted(String text) {
    return find(text).stream().filter(found -> !negation.reaches(text, found.from()));
  }

  /** How to mend a word. */
  String mend(String word) {
    String plain = say.getOrDefault(word, "");
    return plain.isEmpty() ? "Say it in everyday words." : "Write \"" + plain + "\".";
  }

  /** Why the clinic avoids a word; "" where it does not say. */
  String why(String word) {
    return why.getOrDefault(word, "");
  }
}
