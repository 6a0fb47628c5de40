package goniograph.library;

import goniograph.dose.Measure;
import goniograph.dose.Quantity;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.library.Vocabulary.Urgency;
import goniograph.matter.Dotted;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spelling;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import goniograph.matter.Yaml;
import goniograph.matter.YamlReader;
import goniograph.source.Files;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;

/** Reads the files under {@code shared/}. */
final class SharedReader {
  private final Files files;
  private final Consumer<Finding> findings;

  SharedReader(Files files, Consumer<Finding> findings) {
    this.files = files;
    this.findings = findings;
  }

  Optional<Clinic> clinic() {
    String path = "shared/clinic.yaml";
    if (files.bytes(path).isEmpty()) {
      missing(path, "Phone numbers and languages stand there.");
    }
    return map(path)
        .flatMap(
            fields -> {
              Form form = new Form(fields, "the clinic file", findings);
              Optional<Clinic> clinic = ClinicReader.read(form, path);
              form.finish();
              return clinic;
            });
  }

  List<Statement> statements() {
    String source = "shared/statements/" + Library.SOURCE_LANGUAGE + ".yaml";
    if (files.bytes(source).isEmpty()) {
      missing(source, "Every sheet takes its safety wording from there.");
    }
    Map<String, SortedMap<String, Located<String>>> texts = new LinkedHashMap<>();
    Map<String, Located<Urgency>> levels = new LinkedHashMap<>();
    Map<String, Located<String>> ids = new LinkedHashMap<>();
    for (Node.Field field : map(source).map(Node.Fields::fields).orElse(List.of())) {
      statement(field, levels, texts, Library.SOURCE_LANGUAGE);
      ids.put(field.key(), new Located<>(field.key(), field.keyAt()));
    }
    languages("shared/statements/").forEach((language, path) -> translated(language, path, texts));
    List<Statement> statements = new ArrayList<>();
    levels.forEach(
        (id, level) ->
            statements.add(
                new Statement(
                    Optional.ofNullable(ids.get(id)).orElseThrow(),
                    level,
                    Optional.ofNullable(texts.get(id)).orElseGet(TreeMap::new))));
    return List.copyOf(statements);
  }

  private void statement(
      Node.Field field,
      Map<String, Located<Urgency>> levels,
      Map<String, SortedMap<String, Located<String>>> texts,
      String language) {
    Value value = new Value(field.key(), Optional.of(field.value()), findings);
    value.form(
        "a statement",
        form -> {
          var level = form.required("level", "caution").as(Spellings.oneOf(Urgency.class));
          var text = form.required("text", "\"…\"").as(Spellings.TEXT);
          level.ifPresent(given -> levels.put(field.key(), given));
          SortedMap<String, Located<String>> wordings = new TreeMap<>();
          text.ifPresent(given -> wordings.put(language, given));
          texts.put(field.key(), wordings);
          return field;
        });
  }

  private void translated(
      String language, String path, Map<String, SortedMap<String, Located<String>>> texts) {
    if (language.equals(Library.SOURCE_LANGUAGE)) {
      return;
    }
    Consumer<Finding> own = finding -> findings.accept(finding.withLanguage(language));
    for (Node.Field field : map(path).map(Node.Fields::fields).orElse(List.of())) {
      SortedMap<String, Located<String>> wordings = texts.get(field.key());
      if (wordings == null) {
        own.accept(unknownStatement(field, texts));
      } else {
        new Value(field.key(), Optional.of(field.value()), own)
            .form(
                "a translated statement", form -> form.required("text", "\"…\"").as(Spellings.TEXT))
            .flatMap(Located::value)
            .ifPresent(text -> wordings.put(language, text));
      }
    }
  }

  private static Finding unknownStatement(Node.Field field, Map<String, ?> known) {
    return Finding.error(
        "statement-unknown",
        field.keyAt(),
        "There is no statement `"
            + field.key()
            + "` in the source language"
            + Nearest.hint(field.key(), known.keySet())
            + ".",
        "A wording that belongs to nothing is never printed.",
        "Write the id as it stands in `shared/statements/" + Library.SOURCE_LANGUAGE + ".yaml`.");
  }

  SortedMap<String, PhraseSource> phrases() {
    SortedMap<String, PhraseSource> all = new TreeMap<>();
    languages("shared/phrases/")
        .forEach((language, path) -> all.put(language, phrases(language, path)));
    return all;
  }

  private PhraseSource phrases(String language, String path) {
    Map<String, Located<String>> messages = new LinkedHashMap<>();
    Map<String, List<Located<String>>> lists = new LinkedHashMap<>();
    for (Node.Field leaf : map(path).map(Dotted::leaves).orElse(List.of())) {
      Value value =
          new Value(
              leaf.key(),
              Optional.of(leaf.value()),
              finding -> findings.accept(finding.withLanguage(language)));
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
    languages("shared/terms/")
        .forEach(
            (language, path) ->
                read(path, "the terms", form -> terms(language, form))
                    .ifPresent(terms -> all.put(language, terms)));
    return all;
  }

  private static Terms terms(String language, Form form) {
    return new Terms(
        language,
        form.optional("agreed").list(item -> inner(item, SharedReader::agreed)),
        form.optional("accepted").list(Spellings.TEXT),
        form.optional("forbidden").list(item -> inner(item, SharedReader::forbidden)));
  }

  private static Optional<Terms.Agreed> agreed(Form form) {
    var word = form.required("word", "…").as(Spellings.TEXT);
    var say = form.required("say", "…").as(Spellings.TEXT);
    return word.flatMap(given -> say.map(then -> new Terms.Agreed(given, then)));
  }

  private static Optional<Terms.Forbidden> forbidden(Form form) {
    var word = form.required("word", "…").as(Spellings.TEXT);
    var say = form.optional("say").as(Spellings.TEXT);
    return word.map(given -> new Terms.Forbidden(given, say));
  }

  Stock stock() {
    return read("shared/bands.yaml", "the stock", SharedReader::stock).orElse(Stock.NONE);
  }

  private static Stock stock(Form form) {
    Spelling<Quantity> length = DoseSpellings.amount(Measure.LENGTH);
    return new Stock(
        form.optional("bands").list(item -> inner(item, SharedReader::band)),
        form.optional("weights").list(DoseSpellings.amount(Measure.MASS)),
        form.optional("seats").list(length),
        form.optional("steps").list(length));
  }

  private static Optional<Stock.Band> band(Form form) {
    var id = form.required("id", "band-light").as(Spellings.ID_WORD);
    var twin = form.optional("latex_free").as(Spellings.ID_WORD);
    var forces =
        form.required("force_at", "[ { length: 130 cm, force: 9 N } ]")
            .list(item -> inner(item, SharedReader::force));
    return id.map(given -> new Stock.Band(given, twin, forces));
  }

  private static Optional<Stock.ForceAt> force(Form form) {
    var length = form.required("length", "130 cm").as(DoseSpellings.amount(Measure.LENGTH));
    var force = form.required("force", "9 N").as(DoseSpellings.amount(Measure.FORCE));
    return length.flatMap(l -> force.map(f -> new Stock.ForceAt(l.value(), f.value())));
  }

  List<DoseLimit> limits() {
    return rows("limits", RuleReader::limit);
  }

  List<Requirement> requirements() {
    return rows("requires", RuleReader::requirement);
  }

  /** The rows of one table in all rule files. */
  private <T> List<T> rows(String table, Function<Form, Optional<T>> row) {
    List<T> rows = new ArrayList<>();
    for (String path : files.list("shared/rules")) {
      Optional<Node.Fields> fields = path.endsWith(".yaml") ? map(path) : Optional.empty();
      fields
          .flatMap(map -> map.get(table))
          .ifPresent(
              node ->
                  rows.addAll(
                      new Value(table, Optional.of(node), findings)
                          .list(item -> inner(item, row))));
    }
    return List.copyOf(rows);
  }

  List<Source> sources() {
    String path = "shared/sources.yaml";
    Optional<Node> root = root(path);
    if (root.orElse(null) instanceof Node.Fields fields) {
      return fields.fields().stream().flatMap(field -> keyed(field).stream()).toList();
    }
    return new Value("sources", root, findings)
        .list(item -> item.fields().flatMap(fields -> listed(fields)));
  }

  private Optional<Source> keyed(Node.Field field) {
    return new Value(field.key(), Optional.of(field.value()), findings)
        .fields()
        .map(fields -> new Source(new Located<>(field.key(), field.keyAt()), fields));
  }

  private Optional<Source> listed(Node.Fields fields) {
    Form form = new Form(fields, "a source", findings);
    form.entries();
    var id = form.required("id", "who-2020").as(Spellings.ID_WORD);
    form.finish();
    return id.map(given -> new Source(given, fields));
  }

  private static <T> Optional<T> inner(Value item, Function<Form, Optional<T>> reader) {
    return item.form("a row of `" + item.key() + "`", reader).flatMap(Located::value);
  }

  private <T> Optional<T> read(String path, String name, Function<Form, T> reader) {
    return map(path)
        .map(
            fields -> {
              Form form = new Form(fields, name, findings);
              T read = reader.apply(form);
              form.finish();
              return read;
            });
  }

  /** The map that a file holds; a file that is not there holds none. */
  Optional<Node.Fields> map(String path) {
    return new Value(path, root(path), findings).fields();
  }

  private Optional<Node> root(String path) {
    Optional<Yaml> yaml = files.text(path).map(YamlReader::read);
    yaml.ifPresent(read -> read.findings().forEach(findings));
    return yaml.flatMap(Yaml::root);
  }

  private SortedMap<String, String> languages(String folder) {
    SortedMap<String, String> languages = new TreeMap<>();
    for (String path : files.list(folder.substring(0, folder.length() - 1))) {
      if (path.endsWith(".yaml")) {
        languages.put(path.substring(folder.length(), path.length() - ".yaml".length()), path);
      }
    }
    return languages;
  }

  private void missing(String path, String why) {
    findings.accept(
        Finding.error(
            "library-file-missing",
            Span.of(path),
            "The library has no `" + path + "`.",
            why,
            "Add the file; `goniograph new library` makes one to begin from."));
  }
}
