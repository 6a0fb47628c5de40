package goniograph.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A criterion of a ladder that cannot be kept beside another one, or beside the dose.
 *
 * @param use where the criterion stands
 * @param what what contradicts what, in one sentence
 * @param mend how to mend it
 */
public record LadderConflict(Criterion.Use use, Criterion criterion, String what, String mend) {
  private static final List<Criterion> AT_MOST =
      List.of(Criterion.PAIN_AT_MOST, Criterion.EFFORT_AT_MOST, Criterion.GRABS_AT_MOST);

  /**
   * All conflicts of a ladder.
   *
   * @param steps the whole dose of each step
   */
  public static List<LadderConflict> of(Ladder ladder, List<Dose> steps) {
    List<LadderConflict> all = new ArrayList<>();
    AT_MOST.forEach(criterion -> upWhileDown(ladder, criterion).ifPresent(all::add));
    upAbovePain(ladder, steps).ifPresent(all::add);
    downBelowPain(ladder, steps).ifPresent(all::add);
    neverThatEasy(ladder, steps).ifPresent(all::add);
    neverThatMany(ladder, steps).ifPresent(all::add);
    return List.copyOf(all);
  }

  /** Up to 4 one may go up, and over 3 one must go down. */
  private static Optional<LadderConflict> upWhileDown(Ladder ladder, Criterion criterion) {
    int up = value(ladder.goUpWhen(), criterion).orElse(0);
    int limit = value(ladder.goDownUnless(), criterion).orElse(Integer.MAX_VALUE);
    String what = "At " + up + " one goes up and down at once: down is over " + limit + ".";
    return found(up > limit, Criterion.Use.UP, criterion, what, most(criterion, limit));
  }

  private static Optional<LadderConflict> upAbovePain(Ladder ladder, List<Dose> steps) {
    int up = value(ladder.goUpWhen(), Criterion.PAIN_AT_MOST).orElse(0);
    int carryOn = pain(steps).min().orElse(Integer.MAX_VALUE);
    String what = "One goes up with pain " + up + ", but carries on only up to " + carryOn + ".";
    return found(
        up > carryOn,
        Criterion.Use.UP,
        Criterion.PAIN_AT_MOST,
        what,
        most(Criterion.PAIN_AT_MOST, carryOn));
  }

  private static Optional<LadderConflict> downBelowPain(Ladder ladder, List<Dose> steps) {
    int limit = value(ladder.goDownUnless(), Criterion.PAIN_AT_MOST).orElse(Integer.MAX_VALUE);
    int carryOn = pain(steps).max().orElse(0);
    String what = "Over pain " + limit + " one goes down, but carries on up to " + carryOn + ".";
    return found(
        limit < carryOn,
        Criterion.Use.LIMIT,
        Criterion.PAIN_AT_MOST,
        what,
        "Write `pain_at_most: " + carryOn + "` or more.");
  }

  private static Optional<LadderConflict> neverThatEasy(Ladder ladder, List<Dose> steps) {
    int up = value(ladder.goUpWhen(), Criterion.EFFORT_AT_MOST).orElse(Integer.MAX_VALUE);
    int least =
        steps.stream()
            .flatMap(dose -> dose.effort().flatMap(Range::low).stream())
            .mapToInt(Integer::intValue)
            .max()
            .orElse(0);
    String what =
        "One never goes up: the effort is " + least + " at least, not " + up + " at most.";
    return found(
        up < least,
        Criterion.Use.UP,
        Criterion.EFFORT_AT_MOST,
        what,
        "Write `effort_at_most: " + least + "` or more.");
  }

  private static Optional<LadderConflict> neverThatMany(Ladder ladder, List<Dose> steps) {
    int lost = value(ladder.goDownWhen(), Criterion.FORM_LOST_BEFORE_REPS).orElse(0);
    int fewest = steps.stream().flatMapToInt(dose -> dose.reps().stream()).min().orElse(lost);
    String what = "A set has " + fewest + " repetitions on a step, not " + lost + ".";
    return found(
        lost > fewest,
        Criterion.Use.EVENT,
        Criterion.FORM_LOST_BEFORE_REPS,
        what,
        "Write `form_lost_before_reps: " + fewest + "` or less.");
  }

  private static Optional<LadderConflict> found(
      boolean conflict, Criterion.Use use, Criterion criterion, String what, String mend) {
    return conflict
        ? Optional.of(new LadderConflict(use, criterion, what, mend))
        : Optional.empty();
  }

  private static String most(Criterion criterion, int most) {
    return "Write `" + criterion.key() + ": " + most + "` or less.";
  }

  private static IntStream pain(List<Dose> steps) {
    return steps.stream().flatMapToInt(dose -> dose.count(DoseField.PAIN_DURING_MAX).stream());
  }

  private static OptionalInt value(Criteria criteria, Criterion criterion) {
    return criteria.values().get(criterion) instanceof DoseValue.Count count
        ? OptionalInt.of(count.number())
        : OptionalInt.empty();
  }
}
