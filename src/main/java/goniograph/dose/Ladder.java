package goniograph.dose;

import java.util.List;
import java.util.Optional;

/**
 * Ordered dose levels of one exercise, easiest first.
 *
 * @param start number of the step to begin on
 * @param steps the steps, in the order of the file
 * @param stayAtLeast the least time on a step that names none itself
 * @param goUpWhen one step up when all of these hold
 * @param goDownUnless one step down when any of these no longer holds
 * @param goDownWhen one step down when any of these happens that often
 * @param whoDecides who decides on going up
 */
public record Ladder(
    int start,
    List<Step> steps,
    Optional<Quantity> stayAtLeast,
    Criteria goUpWhen,
    Criteria goDownUnless,
    Criteria goDownWhen,
    Optional<Decider> whoDecides) {
  public Ladder {
    steps = List.copyOf(steps);
  }

  /** The step with this number. */
  public Optional<Step> step(int n) {
    return steps.stream().filter(step -> step.n() == n).findFirst();
  }

  /** The whole dose on a step: what the step gives, laid over the entry's dose. */
  public Optional<Dose> doseAt(int n, Dose base) {
    return step(n).map(step -> step.changes().over(base));
  }

  /** The least time to stay on a step, its own or the ladder's. */
  public Optional<Quantity> stayAtLeast(Step step) {
    return step.stayAtLeast().or(() -> stayAtLeast);
  }

  /** Who decides on going up from a step, its own or the ladder's. */
  public Optional<Decider> whoDecides(Step step) {
    return step.whoDecides().or(() -> whoDecides);
  }
}
