package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.dose.DoseField;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Precaution.Limit;
import java.util.Optional;
import java.util.stream.Stream;

/** A limit of a precaution that has nothing to act on. */
public final class PrecautionLimit implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "precaution-limit",
          "A limit of a precaution is about a field that no step of the entry has.",
          "The patient would get the same dose as everybody, while the line says otherwise.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.BAND,
              "limits: { effort: ..4 }",
              "limits: { effort: ..4, «hold»: ..5 s }"),
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "limits: { seat_height: 55.. cm }",
              "limits: { «step_height»: ..10 cm }"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    return exercise.precautions().stream()
        .flatMap(own -> own.limits().stream())
        .filter(limit -> checked.readWell(exercise))
        .flatMap(limit -> field(limit, exercise).stream());
  }

  private Optional<Finding> field(Limit limit, Exercise exercise) {
    return DoseField.ofKey(limit.field().value())
        .filter(
            field ->
                exercise.rungs().stream().allMatch(rung -> rung.dose().dose().get(field).isEmpty()))
        .map(
            field ->
                error(
                    limit.field().at(),
                    "No step has `" + field.key() + "`.",
                    "Limit a field that the dose has, or take the limit out."));
  }
}
