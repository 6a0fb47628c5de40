package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.dose.DoseField;
import goniograph.dose.Timetable;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.LocatedDose;
import goniograph.library.Rung;
import java.util.stream.Stream;

/** A rest day between sessions, and more sessions a week than leave one. */
public final class RestDay implements RungRule {
  private static final int GAP_DAYS = 2;

  private static final RulePage PAGE =
      RulePage.of(
          "rest-day",
          "`rest_day_between` is asked for, and the days a week leave none: round the week at most"
              + " three days have a day between them.",
          "The sheet would say two things that nobody can do together.",
          "Arithmetic of the week",
          Acceptance.NOBODY,
          Example.in(
                  ExampleFiles.BAND,
                  "days_per_week: 3, rest_day_between: true",
                  "days_per_week: «4», rest_day_between: true")
              .where(ExampleFiles.BAND, "  effort: 4..5\n", "  effort: 3..4\n"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    LocatedDose dose = rung.dose();
    int days = dose.dose().daysPerWeek().orElse(0);
    int most = Timetable.mostDays(GAP_DAYS);
    if (!dose.dose().flag(DoseField.REST_DAY_BETWEEN)
        || days <= most
        || limited(exercise, rung, checked)) {
      return Stream.empty();
    }
    return Stream.of(
        error(
                dose.at(DoseField.DAYS_PER_WEEK).orElse(rung.at()),
                days + " days a week leave no day between them.",
                "Write `days_per_week: " + most + "` or fewer, or take `rest_day_between` out.")
            .withBecause(Words.onStep(rung.n(), "rest_day_between true")));
  }

  /** Whether the table of limits finds too many days already. */
  private static boolean limited(Exercise exercise, Rung rung, Checked checked) {
    return Breach.all(checked.library().limits(), exercise, rung).stream()
        .anyMatch(breach -> breach.row().field().value().equals(DoseField.DAYS_PER_WEEK.key()));
  }
}
