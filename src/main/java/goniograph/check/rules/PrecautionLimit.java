package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.LimitEffect;
import goniograph.check.RulePage;
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
          "A limit of a precaution is about a field that no step of the entry has, or lets every step"
              + " pass as it is.",
          "The patient would get the same dose as everybody, while the line says otherwise.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.BAND,
              "limits: { effort: ..4 }",
              "limits: { effort: ..4, «hold»: ..5 s }"),
          Example.in(
              ExampleFiles.HEEL_TO_TOE,
              "limits: { ladder_max: 2 }, statement: s-skin-feet",
              "limits: { ladder_max: 2, «hold»: ..40 s }, statement: s-skin-feet"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    return exercise.precautions().stream()
        .flatMap(own -> own.limits().stream())
        .flatMap(limit -> idle(exercise, limit).stream());
  }

  private Optional<Finding> idle(Exercise exercise, Limit limit) {
    return switch (LimitEffect.of(limit, exercise)) {
      case ACTS -> Optional.empty();
      case NO_SUCH_FIELD ->
          Optional.of(
              error(
                  limit.field().at(),
                  "No step has `" + limit.field().value() + "`.",
                  "Limit a field that the dose has, or take the limit out."));
      case PASSES_ALL ->
          Optional.of(
              warning(
                  limit.field().at(),
                  "Every step is inside this limit already.",
                  "Write a limit that changes something, or take it out."));
    };
  }
}
