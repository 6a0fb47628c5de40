package goniograph.matter;

import goniograph.finding.Finding;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * What the fields of a kind of file are for, in one sentence each, and what may stand in them. A
 * field is named by its dotted path, items of a list by that of the list: {@code
 * dose.frequency.per_day}.
 */
public final class FieldWords {
  private final Properties words = new Properties();

  /**
   * The words in a resource: {@code path=What it is for.|example}.
   *
   * @param room a class beside whose package the resource stands
   */
  public FieldWords(Class<?> room, String resource) {
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(room.getResourceAsStream(resource)), StandardCharsets.UTF_8)) {
      words.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read what the fields are for", e);
    }
  }

  /** What a field is for: one sentence, or "" where nothing is written about it. */
  public String purpose(String path) {
    return part(path, 0);
  }

  private String part(String path, int part) {
    String[] parts = words.getProperty(path, "").split("\\|", -1);
    return part < parts.length ? parts[part].strip() : "";
  }

  /**
   * Takes findings about a file: those about a field without a value then say what it is for;
   * others pass as they are.
   *
   * @param required whether the field with this path must be there
   */
  public Consumer<Finding> explaining(
      Node.Fields file, Predicate<String> required, Consumer<Finding> findings) {
    Map<Integer, String> paths = new LinkedHashMap<>();
    collect("", file, paths);
    return finding -> {
      String path = paths.getOrDefault(finding.at().start(), "");
      boolean empty = finding.rule().equals("field-empty") && !purpose(path).isEmpty();
      findings.accept(empty ? explained(finding, path, required.test(path)) : finding);
    };
  }

  private Finding explained(Finding finding, String path, boolean required) {
    String line = path.substring(path.lastIndexOf('.') + 1) + ": " + part(path, 1);
    return Finding.error(
        finding.rule(),
        finding.at(),
        "`" + path + "` has no value.",
        purpose(path),
        "Write for instance `" + line + (required ? "`." : "`, or take the line out."));
  }

  private static void collect(String path, Node node, Map<Integer, String> paths) {
    if (node instanceof Node.Fields map) {
      String before = path.isEmpty() ? "" : path + ".";
      map.fields().forEach(field -> collect(before + field.key(), field.value(), paths));
    } else if (node instanceof Node.Items list) {
      list.items().forEach(item -> collect(path, item, paths));
    } else {
      paths.put(node.at().start(), path);
    }
  }
}
