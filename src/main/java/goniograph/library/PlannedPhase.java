package goniograph.library;

import goniograph.dose.DoseArithmetic;
import goniograph.dose.Timetable;
import goniograph.dose.Workload;
import goniograph.source.Span;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One phase of a programme as it is carried out.
 *
 * @param phase the phase as it is written
 * @param turns the exercises that run, in the order of the sheet
 * @param topics the advice topics that go with them
 */
public record PlannedPhase(Programme.Phase phase, List<Turn> turns, List<Advice> topics) {
  public PlannedPhase {
    turns = List.copyOf(turns);
    topics = List.copyOf(topics);
  }

  /**
   * An exercise on the step on which it runs.
   *
   * @param named where the programme names it
   */
  public record Turn(Exercise exercise, Rung rung, Span named) {

    /** What its dose comes to; nothing where the dose does not say enough. */
    public Optional<Workload> workload() {
      return DoseArithmetic.workload(rung.dose().dose(), exercise.sides().value());
    }

    /** Seconds on a day on which it is done; 0 where the dose does not say enough. */
    public BigDecimal daySeconds() {
      return workload().map(Workload::daySeconds).orElse(BigDecimal.ZERO);
    }

    /** The days on which it is done, for a week that begins on this day; as the diary has them. */
    public Set<DayOfWeek> days(DayOfWeek first) {
      return rung.dose().dose().daysPerWeek().stream()
          .mapToObj(days -> Timetable.spread(days, first))
          .findFirst()
          .orElse(Set.of());
    }
  }

  /** First and last week. */
  public Programme.Weeks weeks() {
    return phase.weeks().value();
  }

  /** What is done on a day of a week that begins on the first, in order. */
  public List<Turn> on(DayOfWeek day, DayOfWeek first) {
    return turns.stream().filter(turn -> turn.days(first).contains(day)).toList();
  }

  /** What is done on which day of a week that begins on this day, each day in order. */
  public Map<DayOfWeek, List<Turn>> week(DayOfWeek first) {
    Map<DayOfWeek, List<Turn>> week = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      week.put(day, on(day, first));
    }
    return Collections.unmodifiableMap(week);
  }

  /** The exercises of the day that takes longest. */
  public List<Turn> fullestDay() {
    return week(DayOfWeek.MONDAY).values().stream()
        .max(Comparator.comparing(PlannedPhase::seconds))
        .orElse(List.of());
  }

  /** Minutes of the day that takes longest, to one decimal. */
  public BigDecimal fullestMinutes() {
    return Workload.minutes(seconds(fullestDay()));
  }

  private static BigDecimal seconds(List<Turn> day) {
    return day.stream().map(Turn::daySeconds).reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
