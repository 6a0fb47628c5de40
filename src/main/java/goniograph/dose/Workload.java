package goniograph.dose;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a dose comes to, worked out and exact.
 *
 * @param sessionSeconds time of one session with all its rests
 * @param tensionSeconds time under tension in one session, on one side
 * @param sessionReps repetitions in one session, both sides counted where both are done
 * @param perDay sessions a day
 * @param daysPerWeek days a week
 */
public record Workload(
    BigDecimal sessionSeconds,
    BigDecimal tensionSeconds,
    int sessionReps,
    int perDay,
    int daysPerWeek) {
  private static final BigDecimal MINUTE = BigDecimal.valueOf(60);

  /** Time on one day, in seconds. */
  public BigDecimal daySeconds() {
    return sessionSeconds.multiply(BigDecimal.valueOf(perDay));
  }

  /** Time in one week, in seconds. */
  public BigDecimal weekSeconds() {
    return daySeconds().multiply(BigDecimal.valueOf(daysPerWeek));
  }

  /** Sessions in one week. */
  public int weekSessions() {
    return perDay * daysPerWeek;
  }

  /** Repetitions in one week. */
  public int weekReps() {
    return sessionReps * weekSessions();
  }

  /** A volume that a dose declares, and what it comes to: seconds, or repetitions. */
  public record Declared(DoseField field, BigDecimal declared, BigDecimal computed) {}

  /** The declared volumes of the dose that differ by more than 10 % from what is worked out. */
  public List<Declared> disagreeing(Dose dose) {
    return Stream.of(
            declared(dose, DoseField.VOLUME_SESSION, sessionSeconds),
            declared(dose, DoseField.VOLUME_DAY, daySeconds()),
            declared(dose, DoseField.VOLUME_WEEK, weekSeconds()),
            declared(dose, DoseField.VOLUME_WEEK_REPS, BigDecimal.valueOf(weekReps())))
        .flatMap(Optional::stream)
        .filter(pair -> !DoseArithmetic.agree(pair.declared(), pair.computed()))
        .toList();
  }

  private static Optional<Declared> declared(Dose dose, DoseField field, BigDecimal computed) {
    return dose.amount(field)
        .map(Quantity::inBase)
        .or(() -> dose.count(field).stream().mapToObj(BigDecimal::valueOf).findFirst())
        .map(value -> new Declared(field, value, computed));
  }

  /** Minutes of so many seconds, to one decimal, as tables print them. */
  public static BigDecimal minutes(BigDecimal seconds) {
    return seconds.divide(MINUTE, 1, RoundingMode.HALF_UP);
  }
}
