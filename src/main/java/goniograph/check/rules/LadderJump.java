package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.dose.StepChange;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import java.util.stream.Stream;

/** A load that rises too far from one step to the next. */
public final class LadderJump implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "ladder-jump",
          "From one step to the next a load rises by more than 10 %, and past the next item of the"
              + " clinic's table of bands, weights, seats or steps, or past the next of the ways to"
              + " share the work between the legs.",
          "A load that jumps is the commonest way to overdo it.",
          "Ratamess 2009, American College of Sports Medicine: loads rise by 2 to 10 %; the next"
              + " item of the table is a rule of the house",
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "reps: 12, seat_height: 42 cm",
              "reps: 12, seat_height: «35 cm»"),
          Example.in(
                  ExampleFiles.CHAIR_RISE,
                  "reps: 12, seat_height: 45 cm, load.mass: 1.5 kg",
                  "reps: 12, seat_height: 45 cm, load.mass: «3 kg»")
              .insteadOf("reps: 12, seat_height: 45 cm")
              .where(
                  ExampleFiles.CHAIR_RISE,
                  "reps: 10, seat_height: 45 cm",
                  "reps: 10, seat_height: 45 cm, load.mass: 1 kg")
              .where(
                  ExampleFiles.CHAIR_RISE,
                  "seat_height: 42 cm",
                  "seat_height: 42 cm, load.mass: 2 kg")
              .where(
                  ExampleFiles.CHAIR_RISE,
                  ExampleFiles.listed(ExampleFiles.CHAIR_RISE),
                  ExampleFiles.listed(ExampleFiles.CHAIR_RISE, "s-grip")));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    return StepPair.of(exercise, checked).stream()
        .flatMap(pair -> pair.change().jumps().stream().map(jump -> finding(pair, jump)));
  }

  private Finding finding(StepPair pair, StepChange.Jump jump) {
    return error(
            pair.place(Stream.of(jump.variable())),
            "A step goes " + pair.rise(jump.variable()) + ", more than 10 %.",
            jump.next()
                .map(next -> "Write `" + next + "`, the next the clinic has, or rise by 10 %.")
                .orElse("Rise by 10 % at most; the clinic's table has nothing further up."))
        .withBecause(pair.steps());
  }
}
