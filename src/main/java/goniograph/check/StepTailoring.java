package goniograph.check;

import goniograph.dose.Dose;
import goniograph.library.Precaution.Swap;
import goniograph.library.Vocabulary.Action;
import goniograph.library.Vocabulary.Feet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What follows for one step of an entry and some tags.
 *
 * @param step number of the step; 0 for an entry without steps
 * @param derived what the step carries for everybody
 * @param outcomes what is done for each tag that the step concerns, in the order of the tags
 * @param dose the dose kept within all limits
 */
public record StepTailoring(int step, Derived derived, List<TagOutcome> outcomes, Dose dose) {
  public StepTailoring {
    outcomes = List.copyOf(outcomes);
  }

  /** Whether the step is left out. */
  public boolean leftOut() {
    return leavingOut().findAny().isPresent();
  }

  /** Whether a therapist may take it all the same. */
  public boolean mayOverride() {
    return leavingOut().allMatch(TagOutcome::override);
  }

  private Stream<TagOutcome> leavingOut() {
    return outcomes.stream().filter(one -> one.action() == Action.LEAVE_OUT);
  }

  /** The statements that the page must carry: derived ones first, then those of the tags. */
  public Set<String> statements() {
    Set<String> all = new LinkedHashSet<>(derived.statements());
    outcomes.forEach(one -> all.addAll(one.statements()));
    return all;
  }

  /** What is taken instead of something. */
  public List<Swap> swaps() {
    return outcomes.stream().flatMap(one -> one.swaps().stream()).distinct().toList();
  }

  /** Phrase ids of what is used besides. */
  public List<String> equipment() {
    return outcomes.stream().flatMap(one -> one.equipment().stream()).distinct().toList();
  }

  /** What must be on the feet, where a tag says so. */
  public Optional<Feet> feet() {
    return outcomes.stream().flatMap(one -> Kept.feet(one.limits()).stream()).findFirst();
  }
}
