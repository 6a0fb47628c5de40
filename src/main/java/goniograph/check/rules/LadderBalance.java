package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import java.util.stream.Stream;

/** A step that takes away two things that keep one steady. */
public final class LadderBalance implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "ladder-balance",
          "One step makes more than one of the balance words harder: support, stance, vision,"
              + " surface, head movement.",
          "Whoever falls then cannot be told which of the two was too much.",
          RulePage.PRACTICE,
          Acceptance.NOBODY,
          Example.in(
                  ExampleFiles.HEEL_TO_TOE,
                  "    - { n: 3, hold: 30 s, support.need: hover, head_movement: false, supervision:"
                      + " first-time-shown, stay_at_least: 7 d }",
                  "    - «{ n: 3, hold: 30 s, support.need: hover, head_movement: true, supervision:"
                      + " helper-near, stay_at_least: 7 d }»")
              .alongside(ExampleFiles.HEEL_TO_TOE, "{ n: 4, hold: 20 s", "{ n: 4, hold: 35 s"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    return StepPair.of(exercise, checked).stream()
        .filter(pair -> pair.change().raisedBalance().size() > 1)
        .map(
            pair ->
                error(
                        pair.step().at(),
                        "Step "
                            + pair.step().n()
                            + " makes "
                            + StepPair.listed(pair.change().raisedBalance())
                            + " harder at once.",
                        "Change one of them here, and the other on a step of its own.")
                    .withBecause(pair.steps()));
  }
}
