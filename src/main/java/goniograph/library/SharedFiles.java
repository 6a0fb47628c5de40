package goniograph.library;

import goniograph.finding.Finding;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Value;
import goniograph.matter.Yaml;
import goniograph.matter.YamlReader;
import goniograph.source.Files;
import goniograph.source.Span;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;

/** The files under {@code shared/}, read as trees. */
final class SharedFiles {
  private final Files files;
  private final Consumer<Finding> findings;

  SharedFiles(Files files, Consumer<Finding> findings) {
    this.files = files;
    this.findings = findings;
  }

  /** Takes a finding. */
  Consumer<Finding> findings() {
    return findings;
  }

  /** Reports a file that must be there and is not. */
  void mustBeThere(String path, String why) {
    if (files.bytes(path).isEmpty()) {
      missing(path, why);
    }
  }

  /** The rule files, sorted by name. */
  List<String> yamlFiles(String folder) {
    return files.list(folder).stream().filter(path -> path.endsWith(".yaml")).toList();
  }

  /** One row of a table. */
  static <T> Optional<T> row(Value item, Function<Form, Optional<T>> reader) {
    return item.form("a row of `" + item.key() + "`", reader).flatMap(Located::value);
  }

  /** What {@code reader} makes of the map that a file holds. */
  <T> Optional<T> read(String path, String name, Function<Form, T> reader) {
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

  /** What a file holds. */
  Optional<Node> root(String path) {
    Optional<Yaml> yaml = files.text(path).map(YamlReader::read);
    yaml.ifPresent(read -> read.findings().forEach(findings));
    return yaml.flatMap(Yaml::root);
  }

  /** The files of a folder by the language they are named after. */
  SortedMap<String, String> languages(String folder) {
    SortedMap<String, String> languages = new TreeMap<>();
    for (String path : files.list(folder)) {
      if (path.endsWith(".yaml")) {
        languages.put(path.substring(folder.length() + 1, path.length() - ".yaml".length()), path);
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
