package goniograph.library;

import goniograph.dose.Ladder;
import goniograph.dose.Step;
import goniograph.source.Span;
import java.util.List;

/**
 * A ladder and where its steps stand.
 *
 * @param ladder the ladder
 * @param steps its steps, in the same order
 * @param at where it stands
 */
public record LocatedLadder(Ladder ladder, List<LocatedStep> steps, Span at) {
  public LocatedLadder {
    steps = List.copyOf(steps);
  }

  /**
   * One step: only what it changes.
   *
   * @param step the step as the dose room knows it
   * @param changes the dose fields it gives, with their places
   * @param conditions the conditions it gives
   * @param at where it stands
   */
  public record LocatedStep(Step step, LocatedDose changes, Conditions conditions, Span at) {}
}
