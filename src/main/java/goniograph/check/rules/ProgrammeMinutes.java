package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ProgrammeRule;
import goniograph.check.RulePage;
import goniograph.dose.Workload;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.PlannedPhase;
import goniograph.library.PlannedPhase.Turn;
import goniograph.library.Programme;
import goniograph.library.ProgrammePlan;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A programme whose fullest day takes longer than the clinic asks of anybody. */
public final class ProgrammeMinutes implements ProgrammeRule {
  private static final RulePage PAGE =
      RulePage.of(
          "programme-minutes",
          "On the fullest day of a phase the exercises take more minutes than the clinic's setting"
              + " `minutes_a_day`.",
          "What does not fit into the day is left out, and nobody chose what.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          Example.in(ExampleFiles.PROGRAMME, "weeks: 3..8,", "weeks: «3..8»,")
              .alongside(ExampleFiles.CLINIC, "minutes_a_day: 20", "minutes_a_day: 9"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked) {
    BigDecimal budget = BigDecimal.valueOf(Settings.of(checked).minutesADay());
    return plan.phases().stream()
        .filter(phase -> phase.turns().stream().allMatch(turn -> within(turn, checked)))
        .max(Comparator.comparing(PlannedPhase::fullestMinutes))
        .filter(phase -> phase.fullestMinutes().compareTo(budget) > 0)
        .map(phase -> finding(phase, budget))
        .stream();
  }

  /** Whether the dose is within its limits; one that is not has a finding of its own. */
  private static boolean within(Turn turn, Checked checked) {
    return Breach.all(checked.library().limits(), turn.exercise(), turn.rung()).stream()
        .noneMatch(breach -> breach.level() == Level.ERROR);
  }

  private Finding finding(PlannedPhase phase, BigDecimal budget) {
    String parts =
        phase.fullestDay().stream()
            .map(turn -> turn.exercise().id() + " " + Workload.minutes(turn.daySeconds()) + " min")
            .collect(Collectors.joining(", "));
    return warning(
            phase.phase().weeks().at(),
            "The fullest day takes "
                + phase.fullestMinutes()
                + " minutes; the clinic asks for "
                + budget
                + " at most.",
            "Drop an entry, set one to a lower step, or spread them over the week.")
        .withBecause(parts);
  }
}
