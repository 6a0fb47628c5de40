package goniograph.matter;

import goniograph.source.Span;
import java.util.List;
import java.util.Optional;

/** A YAML value with the place it was read from. */
public sealed interface Node {
  /** Where it stands. */
  Span at();

  /**
   * A scalar exactly as typed, without its quotes. A plain scalar on one line is the source text
   * itself; in quoted and block text escapes and folds are resolved.
   *
   * @param quoted whether it stood in quotes or was block text, so that it can only be text
   */
  record Scalar(String raw, boolean quoted, Span at) implements Node {}

  /** A value that was refused while reading; its finding has been given already. */
  record Refused(String raw, Span at) implements Node {}

  /** A list. */
  record Items(List<Node> items, Span at) implements Node {
    public Items {
      items = List.copyOf(items);
    }
  }

  /** A map in the order of the file. */
  record Fields(List<Field> fields, Span at) implements Node {
    public Fields {
      fields = List.copyOf(fields);
    }

    /** The field with this key. */
    public Optional<Field> field(String key) {
      return fields.stream().filter(field -> field.key().equals(key)).findFirst();
    }

    /** The value of this key. */
    public Optional<Node> get(String key) {
      return field(key).map(Field::value);
    }
  }

  /** One key with its value. */
  record Field(String key, Span keyAt, Node value) {}
}
