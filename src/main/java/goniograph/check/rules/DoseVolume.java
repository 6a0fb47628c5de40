package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.dose.DoseArithmetic;
import goniograph.dose.DoseField;
import goniograph.dose.Workload;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.source.Span;
import java.math.BigDecimal;
import java.util.stream.Stream;

/** A declared volume that is not what the dose comes to. */
public final class DoseVolume implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "dose-volume",
          "A `volume` that is written down differs by more than 10 % from what is worked out from"
              + " sets, repetitions, times and rests.",
          "One of the two is a slip, and the patient does too much or too little.",
          RulePage.PRACTICE,
          Acceptance.NOBODY,
          Example.in(
                  ExampleFiles.HEEL_TO_TOE,
                  "  sets: 1\n  volume: { session: 220 s }\n",
                  "  sets: 1\n  volume: { session: «120 s» }\n")
              .insteadOf("  sets: 1\n")
              .where(
                  ExampleFiles.HEEL_TO_TOE,
                  "    - { n: 2, hold: 30 s, support.need: fingertip, head_movement: false,"
                      + " supervision: first-time-shown, stay_at_least: 7 d }\n"
                      + "    - { n: 3, hold: 30 s, support.need: hover, head_movement: false,"
                      + " supervision: first-time-shown, stay_at_least: 7 d }\n"
                      + "    - { n: 4, hold: 20 s, support.need: hover, head_movement: true,"
                      + " supervision: helper-near, stay_at_least: 7 d, who_decides: therapist }\n",
                  ""));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    return DoseArithmetic.workload(rung.dose().dose(), exercise.sides().value()).stream()
        .flatMap(load -> load.disagreeing(rung.dose().dose()).stream())
        .map(pair -> finding(pair, rung.dose().at(pair.field()).orElse(rung.at()), rung.n()));
  }

  private Finding finding(Workload.Declared pair, Span at, int step) {
    String computed = amount(pair.field(), pair.computed());
    return error(
            at,
            "`"
                + pair.field().key()
                + "` says "
                + amount(pair.field(), pair.declared())
                + ", the dose comes to "
                + computed
                + ".",
            "Take the line out, or write " + computed + " if the dose is what you mean.")
        .withBecause(Words.onStep(step, "the dose comes to " + computed));
  }

  private static String amount(DoseField field, BigDecimal number) {
    String digits = number.stripTrailingZeros().toPlainString();
    return field == DoseField.VOLUME_WEEK_REPS ? digits : digits + " s";
  }
}
