package goniograph.check;

import goniograph.library.Precaution.Limit;
import goniograph.library.Precaution.Swap;
import goniograph.library.Vocabulary.Action;
import java.util.List;

/**
 * What is done for one tag on one step.
 *
 * @param tag the tag
 * @param rule the name of the rule, {@code tag-dizziness}; "" where the entry alone says it
 * @param action leave out, adapt or add advice
 * @param override whether a therapist may decide otherwise
 * @param because what made the rule fire, or where the entry says it
 * @param limits the dose and support it is kept within
 * @param swaps what is taken instead: equipment, or the whole entry
 * @param equipment phrase ids of what is used besides
 * @param statements statements that are added
 */
public record TagOutcome(
    String tag,
    String rule,
    Action action,
    boolean override,
    Reason because,
    List<Limit> limits,
    List<Swap> swaps,
    List<String> equipment,
    List<String> statements) {
  public TagOutcome {
    limits = List.copyOf(limits);
    swaps = List.copyOf(swaps);
    equipment = List.copyOf(equipment);
    statements = List.copyOf(statements);
  }

  /** The same, left out. */
  TagOutcome leftOut(String why) {
    return new TagOutcome(
        tag,
        rule,
        Action.LEAVE_OUT,
        override,
        new Reason(because.words() + ", " + why, because.at()),
        limits,
        swaps,
        equipment,
        statements);
  }
}
