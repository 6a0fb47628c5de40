package goniograph.library;

import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.library.Vocabulary.Action;
import goniograph.matter.Located;
import java.util.List;
import java.util.Optional;

/**
 * What the entry does for patients with a tag.
 *
 * @param tag the tag
 * @param action what is done
 * @param limits the dose it is kept within
 * @param swaps what is taken instead: equipment, or the whole entry
 * @param statement a statement that is added
 * @param override whether a therapist may decide otherwise; true where nothing is said
 */
public record Precaution(
    Located<String> tag,
    Located<Action> action,
    List<Limit> limits,
    List<Swap> swaps,
    Optional<Located<String>> statement,
    boolean override) {
  public Precaution {
    limits = List.copyOf(limits);
    swaps = List.copyOf(swaps);
  }

  /**
   * One limit.
   *
   * @param field dotted key of a dose field, or {@code ladder_max}
   * @param within the amounts or counts allowed
   */
  public record Limit(Located<String> field, Located<Within> within) {}

  /** What a limit allows. */
  public sealed interface Within {
    /** Quantities. */
    record Amounts(Range<Quantity> range) implements Within {}

    /** Counts and scores. */
    record Counts(Range<Integer> range) implements Within {}

    /** One word. */
    record Word(String word) implements Within {}
  }

  /** The new id for an old one. */
  public record Swap(Located<String> from, Located<String> to) {}
}
