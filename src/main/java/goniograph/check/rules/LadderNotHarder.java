package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import java.util.List;
import java.util.stream.Stream;

/** A step of a ladder that is no harder than the one below it. */
public final class LadderNotHarder implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "ladder-not-harder",
          "A step of a ladder raises nothing: neither sets, repetitions, hold or tempo, load, days,"
              + " range, a lower seat, a higher step nor a word about balance; or it only gets"
              + " easier. A step with a figure of its own is left to the eye.",
          "The patient works to earn the step, and nothing comes of it.",
          "Ratamess 2009, American College of Sports Medicine, progressive overload",
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "    - { n: 2, sets: 2, reps: 10, seat_height: 45 cm, stay_at_least: 7 d }",
              "    - «{ n: 2, sets: 2, reps: 8, seat_height: 45 cm, stay_at_least: 7 d }»"),
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "    - { n: 4, sets: 3, reps: 12, seat_height: 42 cm, stay_at_least: 14 d }",
              "    - «{ n: 4, sets: 1, reps: 10, seat_height: 50 cm, stay_at_least: 14 d }»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    if (!checked.readWell(exercise)) {
      return Stream.empty();
    }
    List<StepPair> pairs = StepPair.of(exercise, checked);
    return pairs.stream()
        .filter(pair -> pair.change().comparable() && !pair.otherFigure())
        .filter(pair -> !pair.change().raisesOne() && !reachedTooFar(pair, pairs))
        .map(this::finding);
  }

  /** Whether the lower step is itself one too far, so that the next can only be easier. */
  private static boolean reachedTooFar(StepPair pair, List<StepPair> pairs) {
    return pairs.stream()
        .anyMatch(one -> one.step().n() == pair.below().n() && one.change().tooFar());
  }

  private Finding finding(StepPair pair) {
    String lowered = StepPair.listed(pair.change().lowered());
    return error(
            pair.step().at(),
            "Step "
                + pair.step().n()
                + " is no harder than step "
                + pair.below().n()
                + (lowered.isEmpty() ? "." : "; it only lowers " + lowered + "."),
            "Raise one thing, for instance `reps`, or take the step out.")
        .withBecause(pair.steps());
  }
}
