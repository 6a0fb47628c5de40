package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A step that leaves open how often, how long, how hard or for how many weeks. */
public final class DoseIncomplete implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "dose-incomplete",
          "A step does not say how many sets and repetitions, how long each takes (`hold` or"
              + " `tempo`), how often, how hard, up to which pain, or for how many weeks.",
          "The sheet could not tell the patient what to do, and the time could not be worked out.",
          "Slade 2016, exercise reporting checklist (CERT), items 13 and 14",
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "    - { n: 1, sets: 2, reps: 8,  seat_height: 45 cm, stay_at_least: 3 d }",
              "    - «{ n: 1, sets: 2, seat_height: 45 cm, stay_at_least: 3 d }»"));

  private static final List<DoseField> ALWAYS =
      List.of(
          DoseField.SETS,
          DoseField.REPS,
          DoseField.PER_DAY,
          DoseField.DAYS_PER_WEEK,
          DoseField.EFFORT,
          DoseField.PAIN_DURING_MAX,
          DoseField.DURATION);

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    List<String> missing = missing(rung.dose().dose());
    if (missing.isEmpty() || !checked.readWell(exercise)) {
      return Stream.empty();
    }
    return Stream.of(
        error(
                place(exercise, rung),
                "The dose lacks " + Words.listed(missing) + ".",
                "Add them to this step, or to `dose` where every step has the same, for instance "
                    + example(missing.get(0))
                    + ".")
            .withBecause(exercise.ladder().isPresent() ? "step " + rung.n() : ""));
  }

  private static Span place(Exercise exercise, Rung rung) {
    return exercise.ladder().isPresent() ? rung.at() : Places.start(rung.at());
  }

  private static List<String> missing(Dose dose) {
    List<String> missing = new ArrayList<>();
    ALWAYS.stream()
        .filter(field -> dose.get(field).isEmpty())
        .forEach(field -> missing.add(field.key()));
    if (dose.hold().isEmpty() && dose.tempo().isEmpty()) {
      missing.add(DoseField.HOLD.key());
    }
    return missing;
  }

  private static String example(String key) {
    Optional<DoseField> field = DoseField.ofKey(key);
    return "`" + key + ": " + field.map(known -> known.type().example()).orElse("…") + "`";
  }
}
