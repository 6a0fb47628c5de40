package goniograph.library;

import goniograph.dose.Criterion;
import goniograph.dose.Ladder;
import goniograph.dose.Step;
import goniograph.source.Span;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A ladder and where its steps stand.
 *
 * @param ladder the ladder
 * @param steps its steps, in the same order
 * @param criteria the place of each criterion
 * @param at where it stands
 */
public record LocatedLadder(
    Ladder ladder,
    List<LocatedStep> steps,
    Map<Criterion.Use, Map<Criterion, Span>> criteria,
    Span at) {
  public LocatedLadder {
    steps = List.copyOf(steps);
    Map<Criterion.Use, Map<Criterion, Span>> ordered = new EnumMap<>(Criterion.Use.class);
    ordered.putAll(criteria);
    criteria = Collections.unmodifiableMap(ordered);
  }

  /** Where a criterion stands, if it is given. */
  public Optional<Span> at(Criterion.Use use, Criterion criterion) {
    return Optional.ofNullable(criteria.get(use)).map(places -> places.get(criterion));
  }

  /**
   * One step: only what it changes.
   *
   * @param step the step as the dose room knows it
   * @param changes the dose fields it gives, with their places
   * @param conditions the conditions it gives
   * @param range the limits of joints it gives
   * @param at where it stands
   */
  public record LocatedStep(
      Step step, LocatedDose changes, Conditions conditions, List<RangeLimit> range, Span at) {
    public LocatedStep {
      range = List.copyOf(range);
    }
  }
}
