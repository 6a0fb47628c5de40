package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.dose.Dose;
import goniograph.dose.LadderConflict;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.LocatedLadder;
import java.util.List;
import java.util.stream.Stream;

/** Criteria of a ladder that cannot be kept together. */
public final class LadderContradiction implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "ladder-contradiction",
          "A criterion for going up holds while one for going down does too, or it never can hold;"
              + " or a pain limit of the ladder is not the one of the dose.",
          "The sheet would tell the patient two things, and nobody could do both.",
          "Arithmetic of the criteria",
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.HEEL_TO_TOE,
              "go_up_when: { all_reps_done_days: 5, grabs_at_most: 1 }",
              "go_up_when: { all_reps_done_days: 5, grabs_at_most: «4» }"),
          Example.in(
                  ExampleFiles.CHAIR_RISE,
                  "go_down_unless: { pain_at_most: 5, next_morning: settled }",
                  "go_down_unless: { pain_at_most: «2», next_morning: settled }")
              .where(
                  ExampleFiles.CHAIR_RISE,
                  "go_up_when: { all_reps_done_days: 3, pain_at_most: 3,",
                  "go_up_when: { all_reps_done_days: 3, pain_at_most: 2,"),
          Example.in(
              ExampleFiles.BAND,
              "go_down_when: { form_lost_before_reps: 6 }",
              "go_down_when: { form_lost_before_reps: «9» }"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    List<Dose> steps = exercise.rungs().stream().map(rung -> rung.dose().dose()).toList();
    return exercise.ladder().stream()
        .flatMap(
            ladder ->
                LadderConflict.of(ladder.ladder(), steps).stream()
                    .map(conflict -> finding(ladder, conflict)));
  }

  private Finding finding(LocatedLadder ladder, LadderConflict conflict) {
    return error(
            ladder
                .at(conflict.use(), conflict.criterion())
                .orElseGet(() -> Places.start(ladder.at())),
            conflict.what(),
            conflict.mend())
        .withBecause(conflict.use().key() + ", " + conflict.criterion().key());
  }
}
