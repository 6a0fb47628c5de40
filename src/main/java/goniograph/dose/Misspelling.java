package goniograph.dose;

import goniograph.dose.Fault.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Explains a text that is not a value: the first repair that applies names the mistake, and repairs
 * are applied until the text reads, so that every spelling offered is a right one.
 */
final class Misspelling {
  private static final int ROUNDS = 8;
  private static final int LONGEST_QUOTED = 40;

  private static final Map<Measure, Misspelling> OF_QUANTITY = tables();

  private final List<Repair> repairs;
  private final List<String> examples;

  private Misspelling(List<Repair> repairs, List<String> examples) {
    this.repairs = repairs;
    this.examples = examples;
  }

  static Misspelling ofQuantity(Measure measure) {
    return Objects.requireNonNull(OF_QUANTITY.get(measure));
  }

  private static Map<Measure, Misspelling> tables() {
    Map<Measure, Misspelling> tables = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      Misspelling table = new Misspelling(Repairs.ofQuantity(measure), List.of(measure.example()));
      tables.put(measure, table);
    }
    return Collections.unmodifiableMap(tables);
  }

  static Misspelling ofCount(String example) {
    return new Misspelling(Repairs.ofCount(), List.of(example));
  }

  <T> Parsed<T> explain(String raw, Predicate<String> reads) {
    if (raw.isBlank()) {
      return new Parsed.Bad<>(new Fault(Kind.EMPTY, "no value is given", examples));
    }
    Optional<Repair> first = repairs.stream().filter(repair -> repair.applies(raw)).findFirst();
    List<String> spellings = repaired(raw, reads);
    List<String> offered = spellings.isEmpty() ? examples : spellings;
    return new Parsed.Bad<>(
        first
            .map(repair -> new Fault(repair.kind(), quoted(raw) + " " + repair.what(), offered))
            .orElseGet(() -> unreadable(raw)));
  }

  private Fault unreadable(String raw) {
    return new Fault(Kind.NOT_A_NUMBER, quoted(raw) + " cannot be read as a number", examples);
  }

  /** All right spellings that repairs lead to, in the order of the repairs. */
  private List<String> repaired(String raw, Predicate<String> reads) {
    List<String> open = List.of(raw);
    Set<String> right = new LinkedHashSet<>();
    for (int round = 0; round < ROUNDS && !open.isEmpty(); round++) {
      List<String> next = new ArrayList<>();
      for (String text : open) {
        for (String better : repairOnce(text)) {
          (Spelled.of(better).isPresent() && reads.test(better) ? right : next).add(better);
        }
      }
      open = next;
    }
    return List.copyOf(right);
  }

  private List<String> repairOnce(String text) {
    return repairs.stream()
        .filter(repair -> repair.applies(text))
        .findFirst()
        .map(repair -> repair.apply(text))
        .orElse(List.of());
  }

  private static String quoted(String raw) {
    int end = Math.min(raw.length(), LONGEST_QUOTED);
    return "`" + raw.substring(0, end) + (end < raw.length() ? "…" : "") + "`";
  }
}
