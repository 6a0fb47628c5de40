package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ProgrammeRule;
import goniograph.check.RulePage;
import goniograph.dose.DoseField;
import goniograph.dose.Timetable;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.PlannedPhase;
import goniograph.library.PlannedPhase.Turn;
import goniograph.library.Programme;
import goniograph.library.ProgrammePlan;
import goniograph.matter.Located;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Two exercises of one region that each want a day of rest and together leave none. */
public final class ProgrammeRest implements ProgrammeRule {
  private static final int GAP_DAYS = 2;

  private static final RulePage PAGE =
      RulePage.of(
          "programme-rest",
          "Two exercises with `rest_day_between` work the same region, and the days that their"
              + " diaries show together leave no day between.",
          "A muscle group needs about 48 hours after hard work, whichever exercise did it.",
          "Garber 2011, American College of Sports Medicine: 48 hours between sessions for a muscle"
              + " group",
          Acceptance.CLINICIAN,
          Example.in(
                  ExampleFiles.PROGRAMME,
                  "add: [ba-heel-toe-stand, sh-row-band]",
                  "add: [ba-heel-toe-stand, «sh-row-band»]")
              .where(ExampleFiles.CHAIR_RISE, "region: [hip]", "region: [hip, upper-back]")
              .where(
                  ExampleFiles.CHAIR_RISE,
                  "days_per_week: 5 }",
                  "days_per_week: 3, rest_day_between: true }")
              .alongside(ExampleFiles.BAND, "days_per_week: 3,", "days_per_week: 2,"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked) {
    return plan.phases().stream().flatMap(this::phase);
  }

  private Stream<Finding> phase(PlannedPhase phase) {
    List<Turn> resting =
        phase.turns().stream()
            .filter(turn -> turn.rung().dose().dose().flag(DoseField.REST_DAY_BETWEEN))
            .toList();
    return IntStream.range(0, resting.size())
        .boxed()
        .flatMap(
            i ->
                resting.subList(0, i).stream()
                    .filter(first -> sameRegion(first.exercise(), resting.get(i).exercise()))
                    .filter(first -> tooClose(first, resting.get(i)))
                    .map(first -> finding(first, resting.get(i))));
  }

  private static boolean sameRegion(Exercise a, Exercise b) {
    return a.region().stream()
        .map(Located::value)
        .anyMatch(region -> b.region().stream().anyMatch(one -> one.value() == region));
  }

  /** Only what the two do together counts: an exercise with too many days has its own finding. */
  private static boolean tooClose(Turn a, Turn b) {
    Set<DayOfWeek> both = EnumSet.noneOf(DayOfWeek.class);
    both.addAll(a.days(DayOfWeek.MONDAY));
    both.addAll(b.days(DayOfWeek.MONDAY));
    return gap(both) < GAP_DAYS
        && gap(a.days(DayOfWeek.MONDAY)) >= GAP_DAYS
        && gap(b.days(DayOfWeek.MONDAY)) >= GAP_DAYS;
  }

  private static int gap(Set<DayOfWeek> days) {
    return days.isEmpty() ? GAP_DAYS : Timetable.leastGap(days);
  }

  private Finding finding(Turn first, Turn second) {
    int days = first.rung().dose().dose().daysPerWeek().orElse(0);
    return warning(
            second.named(),
            "`"
                + first.exercise().id()
                + "` and `"
                + second.exercise().id()
                + "` together leave no day of rest between.",
            "Give both the same days: `days_per_week: " + days + "` in each.")
        .withBecause(days(first) + "; " + days(second));
  }

  private static String days(Turn turn) {
    return turn.exercise().id()
        + " "
        + turn.rung().dose().dose().daysPerWeek().orElse(0)
        + " days a week";
  }
}
