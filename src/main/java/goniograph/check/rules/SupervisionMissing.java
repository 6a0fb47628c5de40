package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import java.util.List;
import java.util.stream.Stream;

/** A step for which nobody said who must be there. */
public final class SupervisionMissing implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "supervision-missing",
          "`supervision` stands neither in the entry nor in every step of its ladder. The words, least"
              + " first: `independent`, `first-time-shown`, `helper-near`, `clinic-only`.",
          "The desk could not ask whether it was shown today, or who stands by at home.",
          "Slade 2016, exercise reporting checklist (CERT), item 4",
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.HEEL_TO_TOE,
              "    - { n: 2, hold: 30 s, support.need: fingertip, head_movement: false,"
                  + " supervision: first-time-shown, stay_at_least: 7 d }",
              "    - «{ n: 2, hold: 30 s, support.need: fingertip, head_movement: false,"
                  + " stay_at_least: 7 d }»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    List<Rung> without =
        exercise.rungs().stream()
            .filter(rung -> rung.conditions().supervision().isEmpty())
            .toList();
    if (without.isEmpty() || !checked.readWell(exercise)) {
      return Stream.empty();
    }
    boolean all = without.size() == exercise.rungs().size();
    Rung first = without.get(0);
    return Stream.of(
        error(
            all ? Places.start(exercise.common().frontMatter().at()) : first.at(),
            all
                ? "Nothing says who must be there."
                : "Step " + first.n() + " does not say who must be there.",
            "Write `supervision: first-time-shown`, or another of its words, in "
                + (all ? "the entry." : "this step, or once in the entry.")));
  }
}
