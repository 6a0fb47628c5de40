package goniograph.register;

import goniograph.matter.Node;
import goniograph.source.Digest;
import java.text.Normalizer;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One spelling for what says the same: comments, layout, quotes and the order of keys do not count;
 * every word and number does. Text is compared in Unicode normal form C (UAX 15).
 */
final class Canonical {
  private Canonical() {}

  /** The digest of a value. */
  static String digest(Node node) {
    return Digest.of(text(node));
  }

  /** The digest of the documents of a file. */
  static String digest(List<Node> documents) {
    return Digest.of(joined(documents));
  }

  /** Text in quotes, in normal form C, with white space folded. */
  static String quoted(String text) {
    String folded = Normalizer.normalize(text, Normalizer.Form.NFC).replaceAll("\\s+", " ").strip();
    return '"' + folded.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  static String text(Node node) {
    if (node instanceof Node.Fields map) {
      return map.fields().stream()
          .sorted(Comparator.comparing(Node.Field::key))
          .map(field -> quoted(field.key()) + ":" + text(field.value()))
          .collect(Collectors.joining(",", "{", "}"));
    }
    if (node instanceof Node.Items list) {
      return joined(list.items());
    }
    return quoted(node instanceof Node.Scalar scalar ? scalar.raw() : refused(node));
  }

  private static String refused(Node node) {
    return node instanceof Node.Refused refused ? refused.raw() : "";
  }

  private static String joined(List<Node> nodes) {
    return nodes.stream().map(Canonical::text).collect(Collectors.joining(",", "[", "]"));
  }
}
