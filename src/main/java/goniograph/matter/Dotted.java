package goniograph.matter;

import goniograph.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Dotted keys: {@code load.band: x} says the same as {@code load: {band: x}}. */
public final class Dotted {
  private Dotted() {}

  /**
   * Every leaf of a map under its dotted key, in the order of the file; lists are leaves. A leaf
   * that is written twice, once with a dot and once nested, comes twice.
   */
  public static List<Node.Field> leaves(Node.Fields fields) {
    List<Node.Field> leaves = new ArrayList<>();
    collect("", fields, leaves);
    return List.copyOf(leaves);
  }

  private static void collect(String prefix, Node.Fields fields, List<Node.Field> into) {
    for (Node.Field field : fields.fields()) {
      String key = prefix + field.key();
      if (field.value() instanceof Node.Fields inner) {
        collect(key + ".", inner, into);
      } else {
        into.add(new Node.Field(key, field.keyAt(), field.value()));
      }
    }
  }

  /** The nested map of leaves with dotted keys; of several with one key the last counts. */
  public static Node.Fields nested(List<Node.Field> leaves, Span at) {
    Map<String, List<Node.Field>> groups = new LinkedHashMap<>();
    for (Node.Field leaf : leaves) {
      groups.computeIfAbsent(head(leaf.key()), key -> new ArrayList<>()).add(leaf);
    }
    List<Node.Field> fields = new ArrayList<>();
    groups.forEach((key, group) -> fields.add(field(key, group)));
    return new Node.Fields(fields, at);
  }

  private static Node.Field field(String key, List<Node.Field> group) {
    Node.Field last = group.get(group.size() - 1);
    if (last.key().equals(key)) {
      return last;
    }
    List<Node.Field> tails =
        group.stream()
            .filter(leaf -> leaf.key().startsWith(key + "."))
            .map(
                leaf ->
                    new Node.Field(
                        leaf.key().substring(key.length() + 1), leaf.keyAt(), leaf.value()))
            .toList();
    return new Node.Field(key, last.keyAt(), nested(tails, last.value().at()));
  }

  private static String head(String key) {
    int dot = key.indexOf('.');
    return dot < 0 ? key : key.substring(0, dot);
  }
}
