package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.dose.DoseArithmetic;
import goniograph.dose.LoadVariable;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import java.util.stream.Stream;

/** A step that more than doubles the time under tension. */
public final class LadderTension implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "ladder-tension",
          "From one step to the next the time under tension in a session, sets × repetitions × hold"
              + " or tempo, more than doubles.",
          "From 10 to 40 seconds is a different exercise, not the next step.",
          RulePage.PRACTICE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.HEEL_TO_TOE, "{ n: 2, hold: 30 s,", "{ n: 2, hold: «45 s»,"),
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "{ n: 2, sets: 2, reps: 10,",
              "{ n: 2, sets: 4, reps: «10»,"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    return StepPair.of(exercise, checked).stream()
        .filter(pair -> pair.change().tensionMoreThanDoubles())
        .map(this::finding);
  }

  private Finding finding(StepPair pair) {
    Stream<LoadVariable> factors =
        Stream.of(LoadVariable.REP_TIME, LoadVariable.REPS, LoadVariable.SETS)
            .filter(pair.change().raised()::contains);
    return error(
            pair.place(factors),
            "The time under tension goes from "
                + seconds(pair.below())
                + " to "
                + seconds(pair.step())
                + ", more than double.",
            "Put a step between, or lower `hold`, `reps` or `sets`.")
        .withBecause(pair.steps());
  }

  private static String seconds(Rung rung) {
    return DoseArithmetic.tensionSeconds(rung.dose().dose())
        .map(time -> time.stripTrailingZeros().toPlainString() + " s")
        .orElse("nothing");
  }
}
