package goniograph.library;

import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.dose.DoseValue;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.matter.Node;
import goniograph.matter.Spelling;
import goniograph.matter.Value;
import goniograph.source.Span;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Reads the fields of a dose from leaves with dotted keys. */
final class DoseReader {
  static final Map<String, Spelling<DoseValue>> SPELLINGS = spellings();
  static final List<String> KEYS = List.copyOf(SPELLINGS.keySet());

  private final Consumer<Finding> findings;

  DoseReader(Consumer<Finding> findings) {
    this.findings = findings;
  }

  private static Map<String, Spelling<DoseValue>> spellings() {
    Map<String, Spelling<DoseValue>> spellings = new LinkedHashMap<>();
    for (DoseField field : DoseField.values()) {
      spellings.put(field.key(), DoseSpellings.of(field.type()));
    }
    return spellings;
  }

  /** The dose of leaves that are all dose fields. */
  LocatedDose dose(List<Node.Field> leaves) {
    Dose dose = Dose.NONE;
    Map<DoseField, Span> places = new EnumMap<>(DoseField.class);
    for (Node.Field leaf : leaves) {
      Optional<DoseField> field = DoseField.ofKey(leaf.key());
      var value = field.flatMap(known -> value(leaf).as(DoseSpellings.of(known.type())));
      if (field.isPresent() && value.isPresent() && fresh(leaf, places.get(field.get()))) {
        dose = dose.with(field.get(), value.get().value());
        places.put(field.get(), value.get().at());
      }
    }
    return new LocatedDose(dose, places);
  }

  /** The finding about each leaf that is no dose field. */
  void unknown(List<Node.Field> leaves, String name) {
    leaves.stream()
        .filter(leaf -> DoseField.ofKey(leaf.key()).isEmpty())
        .forEach(leaf -> unknown(leaf, name));
  }

  private void unknown(Node.Field leaf, String name) {
    boolean group = KEYS.stream().anyMatch(key -> key.startsWith(leaf.key() + "."));
    String hint = Nearest.hint(leaf.key(), KEYS);
    findings.accept(
        Finding.error(
            group ? "field-kind" : "field-unknown",
            group ? leaf.value().at() : leaf.keyAt(),
            group
                ? "`" + leaf.key() + "` takes a map."
                : "`" + leaf.key() + "` is not a key of " + name + (hint.isEmpty() ? "." : hint),
            "What is not known would be ignored without a word.",
            group
                ? "Write `" + leaf.key() + ": { " + partOf(leaf.key()) + " }`."
                : Nearest.of(leaf.key(), KEYS)
                    .map(near -> "Write `" + near + "`, or take the line out.")
                    .orElse(
                        "Take the line out. Known here: `" + String.join("`, `", KEYS) + "`.")));
  }

  private static String partOf(String group) {
    return Arrays.stream(DoseField.values())
        .filter(field -> field.key().startsWith(group + "."))
        .map(field -> field.key().substring(group.length() + 1) + ": " + field.type().example())
        .findFirst()
        .orElse("…");
  }

  private boolean fresh(Node.Field leaf, @Nullable Span first) {
    if (first == null) {
      return true;
    }
    findings.accept(
        Finding.error(
            "yaml-duplicate-key",
            leaf.keyAt(),
            "`" + leaf.key() + "` stands twice; the first is on line " + first.line() + ".",
            "Only one of the two values can be meant, and nobody can tell which.",
            "Keep one of the two."));
    return false;
  }

  private Value value(Node.Field leaf) {
    return new Value(leaf.key(), Optional.of(leaf.value()), findings);
  }
}
