package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.dose.DoseField;
import goniograph.dose.DoseValue;
import goniograph.dose.Ladder;
import goniograph.dose.Quantity;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.LocatedLadder;
import goniograph.library.LocatedLadder.LocatedStep;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/** A ladder that takes longer than the exercise is meant to be done. */
public final class LadderDuration implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "ladder-duration",
          "The least times on the steps of the ladder add up to more than `duration`. The longest is"
              + " pointed at.",
          "Seven weeks typed for seven days keep a patient on one step to the end; eight days typed"
              + " for eight weeks end the course before the second.",
          RulePage.PRACTICE,
          Acceptance.AUTHOR,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "{ n: 4, sets: 3, reps: 12, seat_height: 42 cm, stay_at_least: 14 d }",
              "«{ n: 4, sets: 3, reps: 12, seat_height: 42 cm, stay_at_least: 14 wk }»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    return checked.readWell(exercise)
        ? exercise.ladder().flatMap(ladder -> tooLong(ladder, exercise)).stream()
        : Stream.empty();
  }

  private Optional<Finding> tooLong(LocatedLadder ladder, Exercise exercise) {
    BigDecimal all =
        ladder.steps().stream()
            .map(step -> stay(ladder.ladder(), step))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return exercise
        .dose()
        .dose()
        .get(DoseField.DURATION)
        .flatMap(LadderDuration::quantity)
        .filter(duration -> all.compareTo(duration.inBase()) > 0)
        .map(duration -> finding(ladder, exercise, duration));
  }

  private Finding finding(LocatedLadder ladder, Exercise exercise, Quantity duration) {
    LocatedStep longest =
        ladder.steps().stream()
            .max(Comparator.comparing(step -> stay(ladder.ladder(), step)))
            .orElseThrow();
    String line =
        exercise.dose().at(DoseField.DURATION).map(at -> " (line " + at.line() + ")").orElse("");
    return warning(
            longest.at(),
            "The steps take longer than the " + duration + " that the exercise is meant for.",
            "Shorten `stay_at_least`, or lengthen `duration`.")
        .withBecause("duration " + duration + line);
  }

  private static Optional<Quantity> quantity(DoseValue value) {
    return value instanceof DoseValue.Amount amount
        ? Optional.of(amount.quantity())
        : Optional.empty();
  }

  private static BigDecimal stay(Ladder ladder, LocatedStep step) {
    return ladder.stayAtLeast(step.step()).map(Quantity::inBase).orElse(BigDecimal.ZERO);
  }
}
