package goniograph.library;

import goniograph.finding.Finding;
import goniograph.matter.FieldWords;
import goniograph.matter.Node;
import goniograph.matter.Shape;
import java.util.function.Consumer;

/**
 * The fields of front matter: what they take and what they are for.
 *
 * @param shape what the front matter takes
 */
public record FieldGuide(Shape shape) {
  private static final FieldWords WORDS = new FieldWords(FieldGuide.class, "fields.properties");

  /** The guide to the front matter of entries of this kind. */
  public static FieldGuide of(Kind kind) {
    return new FieldGuide(FrontMatterReader.shape(kind));
  }

  /** What a field is for, by its dotted path: one sentence, or "" where none is written. */
  public static String purpose(String path) {
    return WORDS.purpose(path);
  }

  /** Findings about fields that have no value say what the field is for. */
  Consumer<Finding> explaining(Node.Fields matter, Consumer<Finding> findings) {
    return WORDS.explaining(matter, path -> required(shape, path), findings);
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
}
