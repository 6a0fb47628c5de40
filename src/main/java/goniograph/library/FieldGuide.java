package goniograph.library;

import goniograph.finding.Finding;
import goniograph.matter.Node;
import goniograph.matter.Shape;
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

/**
 * What the fields of front matter are for, in a few words, and what may stand in them. A field is
 * named by its dotted path, items of a list by that of the list: {@code dose.frequency.per_day}.
 *
 * @param shape what the front matter takes
 */
public record FieldGuide(Shape shape) {
  private static final Properties WORDS = words();

  /** The guide to the front matter of entries of this kind. */
  public static FieldGuide of(Kind kind) {
    return new FieldGuide(FrontMatterReader.shape(kind));
  }

  /** What a field is for: one sentence, or "" where nothing is written about it. */
  public static String purpose(String path) {
    return part(path, 0);
  }

  private static String example(String path) {
    return part(path, 1);
  }

  private static String part(String path, int part) {
    String[] parts = WORDS.getProperty(path, "").split("\\|", -1);
    return part < parts.length ? parts[part].strip() : "";
  }

  /** Findings about fields that have no value say what the field is for; others pass as they are. */
  Consumer<Finding> explaining(Node.Fields matter, Consumer<Finding> findings) {
    Map<Integer, String> paths = new LinkedHashMap<>();
    collect("", matter, paths);
    return finding -> findings.accept(explained(finding, paths));
  }

  private Finding explained(Finding finding, Map<Integer, String> paths) {
    String path = paths.getOrDefault(finding.at().start(), "");
    if (!finding.rule().equals("field-empty") || purpose(path).isEmpty()) {
      return finding;
    }
    return Finding.error(
        finding.rule(),
        finding.at(),
        "`" + path + "` has no value.",
        purpose(path),
        "Write for instance `"
            + path.substring(path.lastIndexOf('.') + 1)
            + ": "
            + example(path)
            + (required(shape, path) ? "`." : "`, or take the line out."));
  }

  private static boolean required(Shape shape, String path) {
    int dot = path.indexOf('.');
    String head = dot < 0 ? path : path.substring(0, dot);
    return shape instanceof Shape.Fields map
        && map.fields().stream()
            .filter(field -> field.key().equals(head))
            .anyMatch(
                field ->
                    dot < 0 ? field.required() : required(field.shape(), path.substring(dot + 1)));
  }

  private static void collect(String path, Node node, Map<Integer, String> paths) {
    if (node instanceof Node.Fields map) {
      map.fields()
          .forEach(
              field ->
                  collect(
                      path.isEmpty() ? field.key() : path + "." + field.key(),
                      field.value(),
                      paths));
    } else if (node instanceof Node.Items list) {
      list.items().forEach(item -> collect(path, item, paths));
    } else {
      paths.put(node.at().start(), path);
    }
  }

  private static Properties words() {
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(FieldGuide.class.getResourceAsStream("fields.properties")),
            StandardCharsets.UTF_8)) {
      Properties words = new Properties();
      words.load(in);
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read what the fields are for", e);
    }
  }
}
