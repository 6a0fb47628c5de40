package goniograph.library;

import goniograph.library.Precaution.Limit;
import goniograph.library.Vocabulary.Action;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Located;
import goniograph.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * One row of the table of precaution tags: what is done for patients with a tag, if an entry has
 * what the tag acts on. A tag may have several rows.
 *
 * @param tag the tag; one that ends in {@value #EACH_REGION} stands for one tag a region
 * @param trigger what it acts on: names of rules that fired, property words, {@value #PACK} or
 *     {@value #HELPER}; {@value #EACH_REGION} stands for the region of the tag
 * @param unlessType the type of exercise it does not act on
 * @param action what is done unless the entry says something stricter
 * @param entryMay the laxest that the entry may say instead; where nothing is said, the action
 * @param override whether a therapist may decide otherwise
 * @param limits the dose and support it is kept within
 * @param statements statements that are added
 * @param equipment phrase ids of what is used besides
 * @param latexFree whether bands are changed for their latex-free twins
 * @param pack what it does to the pack
 * @param source id of a source, or {@code common-practice}
 * @param at where the row stands
 */
public record TagRule(
    Located<String> tag,
    Trigger trigger,
    Optional<Located<Type>> unlessType,
    Located<Action> action,
    Optional<Located<Action>> entryMay,
    boolean override,
    List<Limit> limits,
    List<Located<String>> statements,
    List<Located<String>> equipment,
    boolean latexFree,
    PackCare pack,
    Located<String> source,
    Span at) {
  /** In a tag or a property: the region of the tag. */
  public static final String EACH_REGION = "<region>";

  /** What a tag acts on that changes the pack, not an entry. */
  public static final String PACK = "pack";

  /** What a tag acts on where someone must stand by, as the entry or another tag has it. */
  public static final String HELPER = "helper-needed";

  public TagRule {
    limits = List.copyOf(limits);
    statements = List.copyOf(statements);
    equipment = List.copyOf(equipment);
  }

  /**
   * What a tag does to the pack.
   *
   * @param entriesMax the most entries
   * @param layout the layout that is offered
   * @param add id of an entry that is added
   * @param therapistDecides whether going up is decided by the therapist
   */
  public record PackCare(
      Optional<Integer> entriesMax,
      Optional<Located<String>> layout,
      Optional<Located<String>> add,
      boolean therapistDecides) {
    /** Nothing. */
    public static final PackCare NONE =
        new PackCare(Optional.empty(), Optional.empty(), Optional.empty(), false);
  }

  /** The region of a tag that this row is for, "" where it has none; empty if it is for others. */
  public Optional<String> region(String asked) {
    String own = tag.value();
    if (!own.endsWith(EACH_REGION)) {
      return own.equals(asked) ? Optional.of("") : Optional.empty();
    }
    String stem = own.substring(0, own.length() - EACH_REGION.length());
    return asked.startsWith(stem)
        ? Optional.of(asked.substring(stem.length())).filter(Vocabulary.Region.WORDS::contains)
        : Optional.empty();
  }

  /** The name of the rule: {@code tag-} and the tag, without its region. */
  public String rule() {
    String own = tag.value();
    return "tag-"
        + (own.endsWith(EACH_REGION)
            ? own.substring(0, own.length() - EACH_REGION.length() - 1)
            : own);
  }
}
