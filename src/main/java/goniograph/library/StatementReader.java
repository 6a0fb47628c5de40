package goniograph.library;

import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.library.Vocabulary.Urgency;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Reads the statements of all languages. */
final class StatementReader {
  private final SharedFiles files;

  StatementReader(SharedFiles files) {
    this.files = files;
  }

  List<Statement> statements() {
    String source = "shared/statements/" + Library.SOURCE_LANGUAGE + ".yaml";
    files.mustBeThere(source, "Every sheet takes its safety wording from there.");
    List<Node.Field> fields = fields(source);
    Map<String, Statement> read = new LinkedHashMap<>();
    fields.forEach(field -> statement(field).ifPresent(one -> read.put(field.key(), one)));
    Set<String> known = fields.stream().map(Node.Field::key).collect(Collectors.toSet());
    files.languages("shared/statements").forEach((tag, path) -> translated(tag, path, known, read));
    return List.copyOf(read.values());
  }

  private List<Node.Field> fields(String path) {
    return files.map(path).map(Node.Fields::fields).orElse(List.of());
  }

  private Optional<Statement> statement(Node.Field field) {
    Located<String> id = new Located<>(field.key(), field.keyAt());
    return new Value(field.key(), Optional.of(field.value()), files.findings())
        .form("a statement", form -> statement(id, form))
        .flatMap(Located::value);
  }

  private static Optional<Statement> statement(Located<String> id, Form form) {
    var level = form.required("level", "caution").as(Spellings.oneOf(Urgency.class));
    var text = form.required("text", "\"…\"").as(Spellings.TEXT);
    return level.flatMap(
        urgency ->
            text.map(
                wording ->
                    new Statement(id, urgency, new TreeMap<>())
                        .with(Library.SOURCE_LANGUAGE, wording)));
  }

  private void translated(
      String language, String path, Set<String> known, Map<String, Statement> into) {
    if (language.equals(Library.SOURCE_LANGUAGE)) {
      return;
    }
    Consumer<Finding> own = finding -> files.findings().accept(finding.withLanguage(language));
    for (Node.Field field : fields(path)) {
      if (!known.contains(field.key())) {
        own.accept(unknownStatement(field, known));
      }
      new Value(field.key(), Optional.of(field.value()), own)
          .form("a translated statement", form -> form.required("text", "\"…\"").as(Spellings.TEXT))
          .flatMap(Located::value)
          .ifPresent(
              text -> into.computeIfPresent(field.key(), (id, one) -> one.with(language, text)));
    }
  }

  private static Finding unknownStatement(Node.Field field, Set<String> known) {
    String hint = Nearest.hint(field.key(), new TreeSet<>(known));
    return Finding.error(
        "statement-unknown",
        field.keyAt(),
        "There is no statement `"
            + field.key()
            + "` in the source language"
            + (hint.isEmpty() ? "." : hint),
        "A wording that belongs to nothing is never printed.",
        "Write the id as it stands in `shared/statements/" + Library.SOURCE_LANGUAGE + ".yaml`.");
  }
}
