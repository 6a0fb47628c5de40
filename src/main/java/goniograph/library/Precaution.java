package goniograph.library;

import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.library.Vocabulary.Action;
import goniograph.library.Vocabulary.SupportNeed;
import goniograph.matter.Located;
import goniograph.source.Span;
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
 * @param override whether a therapist may decide otherwise; where nothing is said, as the clinic's
 *     table has it
 * @param at where it stands
 */
public record Precaution(
    Located<String> tag,
    Located<Action> action,
    List<Limit> limits,
    List<Swap> swaps,
    Optional<Located<String>> statement,
    Optional<Located<Boolean>> override,
    Span at) {
  public Precaution {
    limits = List.copyOf(limits);
    swaps = List.copyOf(swaps);
  }

  /**
   * One limit.
   *
   * @param field dotted key of a dose field, {@value #LADDER_MAX}, {@value #SUPPORT_NEED} or
   *     {@value #FEET}
   * @param within what is allowed
   */
  public record Limit(Located<String> field, Located<Within> within) {
    /** The highest step of the ladder. */
    public static final String LADDER_MAX = "ladder_max";

    /** The least that the hands do at the support. */
    public static final String SUPPORT_NEED = "support.need";

    /** What is on the feet. */
    public static final String FEET = "feet";
  }

  /** What a limit allows. */
  public sealed interface Within {
    /** Quantities. */
    record Amounts(Range<Quantity> range) implements Within {}

    /** Counts and scores. */
    record Counts(Range<Integer> range) implements Within {}

    /** This need of support, or more. */
    record Support(SupportNeed least) implements Within {}

    /** One word. */
    record Word(String word) implements Within {}
  }

  /** Whether it says what to adapt: a limit, or what is taken instead. */
  public boolean saysHow() {
    return !limits.isEmpty() || !swaps.isEmpty();
  }

  /** The new id for an old one. */
  public record Swap(Located<String> from, Located<String> to) {}
}
