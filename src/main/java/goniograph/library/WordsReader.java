package goniograph.library;

import goniograph.matter.Dotted;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads phrases and terms. */
final class WordsReader {
  private final SharedFiles files;

  WordsReader(SharedFiles files) {
    this.files = files;
  }

  SortedMap<String, PhraseSource> phrases() {
    SortedMap<String, PhraseSource> all = new TreeMap<>();
    files
        .languages("shared/phrases")
        .forEach((language, path) -> all.put(language, phrases(language, path)));
    return all;
  }

  private PhraseSource phrases(String language, String path) {
    Map<String, Located<String>> messages = new LinkedHashMap<>();
    Map<String, List<Located<String>>> lists = new LinkedHashMap<>();
    for (Node.Field leaf : files.map(path).map(Dotted::leaves).orElse(List.of())) {
      Value value =
          new Value(
              leaf.key(),
              Optional.of(leaf.value()),
              finding -> files.findings().accept(finding.withLanguage(language)));
      if (leaf.value() instanceof Node.Items) {
        lists.put(leaf.key(), value.list(Spellings.TEXT));
      } else {
        value.as(Spellings.TEXT).ifPresent(text -> messages.put(leaf.key(), text));
      }
    }
    return new PhraseSource(language, messages, lists);
  }

  SortedMap<String, Terms> terms() {
    SortedMap<String, Terms> all = new TreeMap<>();
    files
        .languages("shared/terms")
        .forEach(
            (language, path) ->
                files
                    .read(path, "the terms", form -> terms(language, form))
                    .ifPresent(terms -> all.put(language, terms)));
    return all;
  }

  private static Terms terms(String language, Form form) {
    return new Terms(
        language,
        form.optional("agreed").list(item -> SharedFiles.row(item, WordsReader::agreed)),
        form.optional("accepted").list(Spellings.TEXT),
        avoided(form, "forbidden"),
        avoided(form, "ambiguous"),
        avoided(form, "frightening"),
        avoided(form, "hard"));
  }

  private static List<Terms.Avoided> avoided(Form form, String key) {
    return form.optional(key).list(item -> SharedFiles.row(item, WordsReader::avoided));
  }

  private static Optional<Terms.Agreed> agreed(Form form) {
    var word = form.required("word", "…").as(Spellings.TEXT);
    var say = form.required("say", "…").as(Spellings.TEXT);
    return word.flatMap(given -> say.map(then -> new Terms.Agreed(given, then)));
  }

  private static Optional<Terms.Avoided> avoided(Form form) {
    var word = form.required("word", "…").as(Spellings.TEXT);
    var say = form.optional("say").as(Spellings.TEXT);
    var why = form.optional("why").as(Spellings.TEXT);
    return word.map(given -> new Terms.Avoided(given, say, why));
  }
}
