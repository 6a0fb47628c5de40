package goniograph.dose;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** The arithmetic of a dose: one formula for the check, the desk, the cover and the chart note. */
public final class DoseArithmetic {
  private static final BigDecimal TENTH = new BigDecimal("0.1");
  private static final Quantity AWAKE = Quantity.of(16, Unit.HOUR);

  private DoseArithmetic() {}

  /**
   * What the dose comes to. {@code Session = Σ sides {sets × [reps × (hold or tempo sum) + (reps −
   * 1) × relax] + (sets − 1) × rest} + (sides − 1) × rest}; relax and rest left out are 0. Nothing
   * if sets, reps, hold and tempo, sessions a day or days a week are missing.
   */
  public static Optional<Workload> workload(Dose dose, Sides sides) {
    Optional<BigDecimal> rep = repSeconds(dose);
    if (rep.isEmpty()
        || dose.sets().isEmpty()
        || dose.reps().isEmpty()
        || dose.perDay().isEmpty()
        || dose.daysPerWeek().isEmpty()) {
      return Optional.empty();
    }
    int sets = dose.sets().getAsInt();
    int reps = dose.reps().getAsInt();
    BigDecimal set = times(reps, rep.get()).add(times(reps - 1, seconds(dose.relax())));
    BigDecimal rest = seconds(dose.rest());
    BigDecimal side = times(sets, set).add(times(sets - 1, rest));
    BigDecimal session = times(sides.timed(), side).add(times(sides.timed() - 1, rest));
    return Optional.of(
        new Workload(
            session,
            times(sets * reps, rep.get()),
            sides.timed() * sets * reps,
            dose.perDay().getAsInt(),
            dose.daysPerWeek().getAsInt()));
  }

  /** Seconds of one repetition: its hold, or else the sum of its tempo. */
  public static Optional<BigDecimal> repSeconds(Dose dose) {
    if (dose.hold().isPresent()) {
      return dose.hold().map(Quantity::inBase);
    }
    return dose.tempo().stream().map(Quantity::inBase).reduce(BigDecimal::add);
  }

  /** Time under tension in a session on one side, in seconds: sets × reps × hold or tempo sum. */
  public static Optional<BigDecimal> tensionSeconds(Dose dose) {
    if (dose.sets().isEmpty() || dose.reps().isEmpty()) {
      return Optional.empty();
    }
    int all = dose.sets().getAsInt() * dose.reps().getAsInt();
    return repSeconds(dose).map(rep -> times(all, rep));
  }

  /** Whether a declared value is within 10 % of the one worked out. */
  public static boolean agree(BigDecimal declared, BigDecimal computed) {
    BigDecimal allowed = computed.abs().multiply(TENTH);
    return declared.subtract(computed).abs().compareTo(allowed) <= 0;
  }

  /** Whether all sessions of a day fit into 16 waking hours: {@code (per_day − 1) × gap ≤ 16 h}. */
  public static boolean fitsWakingHours(int perDay, Quantity gap) {
    return times(perDay - 1, gap.inBase()).compareTo(AWAKE.inBase()) <= 0;
  }

  /** The longest time between so many sessions a day that fits, in whole minutes. */
  public static Quantity longestGap(int perDay) {
    BigDecimal minutes = AWAKE.inBase().divide(Unit.MINUTE.inBase(), 0, RoundingMode.DOWN);
    BigDecimal gaps = BigDecimal.valueOf(Math.max(1, perDay - 1));
    return new Quantity(minutes.divide(gaps, 0, RoundingMode.DOWN), Unit.MINUTE);
  }

  /**
   * Whether a load rises by a small step: at most 10 %, or to the next item of the clinic's table.
   * A load that falls as it gets harder, as the height of a seat does, is given below zero.
   *
   * @param next the next harder item, if there is one
   */
  public static boolean smallStep(BigDecimal from, BigDecimal to, Optional<BigDecimal> next) {
    return next.filter(item -> item.compareTo(to) >= 0).isPresent()
        || to.compareTo(from.add(from.abs().multiply(TENTH))) <= 0;
  }

  private static BigDecimal seconds(Optional<Quantity> time) {
    return time.map(Quantity::inBase).orElse(BigDecimal.ZERO);
  }

  private static BigDecimal times(int count, BigDecimal amount) {
    return amount.multiply(BigDecimal.valueOf(count));
  }
}
