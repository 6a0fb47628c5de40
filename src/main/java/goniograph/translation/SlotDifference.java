package goniograph.translation;

import goniograph.matter.Inline;
import goniograph.matter.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * How the slots of a version's piece differ from its source's. Slots are compared by name without
 * their grammatical form, which every language has its own: {@code side.leg:with} is {@code
 * side.leg}.
 *
 * @param lost names that stand more often in the source
 * @param doubled names that stand more often in the version
 * @param invented names that the source does not have
 */
public record SlotDifference(List<String> lost, List<String> doubled, List<String> invented) {
  public SlotDifference {
    lost = List.copyOf(lost);
    doubled = List.copyOf(doubled);
    invented = List.copyOf(invented);
  }

  /** The difference between a source piece and a version's. */
  public static SlotDifference between(Piece source, Piece version) {
    return between(source.slots(), version.slots());
  }

  /** The difference between the slots of a source text and those of its version. */
  public static SlotDifference between(List<Inline.Slot> source, List<Inline.Slot> version) {
    Map<String, Integer> wanted = counted(source);
    Map<String, Integer> found = counted(version);
    SortedSet<String> names = new TreeSet<>(wanted.keySet());
    names.addAll(found.keySet());
    SlotDifference none = new SlotDifference(List.of(), List.of(), List.of());
    return names.stream()
        .map(name -> one(name, wanted.getOrDefault(name, 0), found.getOrDefault(name, 0)))
        .reduce(none, SlotDifference::and);
  }

  /** Whether nothing differs. */
  public boolean isEmpty() {
    return lost.isEmpty() && doubled.isEmpty() && invented.isEmpty();
  }

  private static SlotDifference one(String name, int wanted, int found) {
    return new SlotDifference(
        found < wanted ? List.of(name) : List.of(),
        found > wanted && wanted > 0 ? List.of(name) : List.of(),
        found > 0 && wanted == 0 ? List.of(name) : List.of());
  }

  private SlotDifference and(SlotDifference other) {
    return new SlotDifference(
        joined(lost, other.lost), joined(doubled, other.doubled), joined(invented, other.invented));
  }

  private static List<String> joined(List<String> a, List<String> b) {
    List<String> all = new ArrayList<>(a);
    all.addAll(b);
    return all;
  }

  private static Map<String, Integer> counted(List<Inline.Slot> slots) {
    Map<String, Integer> counts = new TreeMap<>();
    slots.forEach(slot -> counts.merge(name(slot), 1, Integer::sum));
    return counts;
  }

  private static String name(Inline.Slot slot) {
    int form = slot.name().indexOf(':');
    return form < 0 ? slot.name() : slot.name().substring(0, form);
  }
}
