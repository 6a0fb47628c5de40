package goniograph.matter;

import java.util.List;
import java.util.Optional;

/** What may stand somewhere in a file, as a value that can be written down as a schema. */
public sealed interface Shape {
  /** Any text. */
  Shape TEXT = new Text("");

  /** One of these words. */
  record Words(List<String> words) implements Shape {
    public Words {
      words = List.copyOf(words);
    }
  }

  /** {@code true} or {@code false}. */
  record Truth() implements Shape {}

  /** A whole number, both ends allowed. */
  record Whole(int least, int most) implements Shape {}

  /**
   * A text.
   *
   * @param pattern what the whole of it matches, in the regular expressions that ECMA-262 and Java
   *     share; "" for any text
   */
  record Text(String pattern) implements Shape {}

  /** A day of the calendar, as in ISO 8601. */
  record Day() implements Shape {}

  /** A list. */
  record Items(Shape item) implements Shape {}

  /**
   * A map.
   *
   * @param fields the keys that are known
   * @param others what stands behind any other key; nothing where there may be no other
   * @param dotted whether {@code a.b: x} may be written for {@code a: {b: x}}
   */
  record Fields(List<Field> fields, Optional<Shape> others, boolean dotted) implements Shape {
    public Fields {
      fields = List.copyOf(fields);
    }
  }

  /** One key of a map. */
  record Field(String key, Shape shape, boolean required) {}

  /** One of several. */
  record AnyOf(List<Shape> shapes) implements Shape {
    public AnyOf {
      shapes = List.copyOf(shapes);
    }
  }
}
