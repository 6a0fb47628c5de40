package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.dose.DoseArithmetic;
import goniograph.dose.DoseField;
import goniograph.dose.Quantity;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.LocatedDose;
import goniograph.library.Rung;
import java.util.Optional;
import java.util.stream.Stream;

/** More sessions a day than fit between waking up and going to bed. */
public final class WakingHours implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "waking-hours",
          "Sessions a day, with the least time between them, need more than 16 waking hours.",
          "The patient would have to get up at night, or drop the pause that was meant.",
          RulePage.PRACTICE,
          Acceptance.NOBODY,
          Example.in(
                  ExampleFiles.HEEL_TO_TOE,
                  "frequency: { per_day: 3, days_per_week: 7, gap: 8 h }",
                  "frequency: { per_day: 3, days_per_week: 7, gap: «9 h» }")
              .insteadOf("frequency: { per_day: 1, days_per_week: 7 }"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    LocatedDose dose = rung.dose();
    Optional<Quantity> gap = dose.dose().amount(DoseField.GAP);
    if (gap.isEmpty() || dose.dose().perDay().isEmpty()) {
      return Stream.empty();
    }
    int perDay = dose.dose().perDay().getAsInt();
    return DoseArithmetic.fitsWakingHours(perDay, gap.get())
        ? Stream.empty()
        : Stream.of(
            error(
                    dose.at(DoseField.GAP).orElse(rung.at()),
                    perDay + " sessions with " + gap.get() + " between them do not fit into a day.",
                    "Lower `per_day`, or write a shorter `gap`: `"
                        + DoseArithmetic.longestGap(perDay)
                        + "` at most.")
                .withBecause(Words.onStep(rung.n(), "per_day " + perDay + ", gap " + gap.get())));
  }
}
