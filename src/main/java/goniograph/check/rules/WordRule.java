package goniograph.check.rules;

import goniograph.check.Checked;
import goniograph.check.Rule;
import goniograph.finding.Finding;
import goniograph.language.WordFinder;
import goniograph.library.Entry;
import goniograph.library.Statement;
import goniograph.library.Version;
import goniograph.matter.Located;
import goniograph.matter.Slots;
import goniograph.source.Span;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A rule that looks for the words of one list in all texts, and in the statements too. */
abstract class WordRule implements Rule {

  /** Its list in a language. */
  abstract WordList list(String language, Checked checked);

  /** Which of its words in a sentence are findings, and how grave; the words are given. */
  abstract Stream<Finding> in(Said said, WordList list, Checked checked);

  /** What it says about a word of a statement. */
  abstract Finding inStatement(Span at, String word, String mend);

  @Override
  public final Stream<Finding> check(Checked checked) {
    Map<String, WordList> lists = new TreeMap<>();
    Stream<Finding> texts =
        checked
            .entries()
            .flatMap(
                entry ->
                    entry.languages().stream()
                        .flatMap(
                            tag ->
                                entry.version(tag).stream()
                                    .flatMap(
                                        version -> inVersion(entry, version, lists, checked))));
    Stream<Finding> statements =
        checked.library().statements().stream()
            .flatMap(statement -> inStatement(statement, lists, checked));
    return Stream.concat(texts, statements);
  }

  private WordList list(String language, Map<String, WordList> lists, Checked checked) {
    return lists.computeIfAbsent(language, tag -> list(tag, checked));
  }

  private Stream<Finding> inVersion(
      Entry entry, Version version, Map<String, WordList> lists, Checked checked) {
    WordList list = list(version.language(), lists, checked);
    return Said.all(version, checked).stream()
        .flatMap(said -> in(said, list, checked))
        .map(f -> f.withEntry(entry.id()).withLanguage(version.language()));
  }

  private Stream<Finding> inStatement(
      Statement statement, Map<String, WordList> lists, Checked checked) {
    return statement.texts().entrySet().stream()
        .flatMap(
            text ->
                inStatement(text.getValue(), list(text.getKey(), lists, checked))
                    .map(finding -> finding.withLanguage(text.getKey())));
  }

  private Stream<Finding> inStatement(Located<String> text, WordList list) {
    return list.asserted(text.value())
        .map(word -> found(Slots.part(text, word.from(), word.to()), word, list));
  }

  /** What it says about a word of a statement, said of a word at this place. */
  final Finding found(Span at, WordFinder.Found word, WordList list) {
    return reasoned(inStatement(at, word.phrase(), list.mend(word.phrase())), list, word);
  }

  /** The finding with the clinic's own reason, where it gives one. */
  static Finding reasoned(Finding finding, WordList list, WordFinder.Found found) {
    String why = list.why(found.phrase());
    return why.isEmpty() ? finding : finding.withBecause(why);
  }
}
