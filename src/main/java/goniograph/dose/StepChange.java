package goniograph.dose;

import goniograph.dose.LoadVariable.At;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What changes from one step of a ladder to the next.
 *
 * @param raised what makes it harder
 * @param lowered what makes it easier
 * @param tensionFactor by what the time under tension is multiplied, if it can be worked out
 */
public record StepChange(
    Set<LoadVariable> raised, Set<LoadVariable> lowered, Optional<BigDecimal> tensionFactor) {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final int DECIMALS = 3;

  public StepChange {
    raised = Collections.unmodifiableSet(raised);
    lowered = Collections.unmodifiableSet(lowered);
  }

  /**
   * Compares two steps, each whole: its dose as by {@link Ladder#doseAt}, and its other fields laid
   * over those of the entry. A variable that only one of them names does not count.
   *
   * @param bands ids of the clinic's band table, weakest first
   */
  public static StepChange between(
      Dose from,
      Map<String, String> fromOthers,
      Dose to,
      Map<String, String> toOthers,
      List<String> bands) {
    At before = new At(from, fromOthers, bands);
    At after = new At(to, toOthers, bands);
    Set<LoadVariable> raised = EnumSet.noneOf(LoadVariable.class);
    Set<LoadVariable> lowered = EnumSet.noneOf(LoadVariable.class);
    for (LoadVariable variable : LoadVariable.values()) {
      int change = change(variable, before, after);
      if (change != 0) {
        (change > 0 ? raised : lowered).add(variable);
      }
    }
    return new StepChange(raised, lowered, tensionFactor(from, to));
  }

  /** Whether something gets harder. */
  public boolean raisesOne() {
    return !raised.isEmpty();
  }

  /** Whether all that changes gets easier. */
  public boolean dropsAll() {
    return raised.isEmpty() && !lowered.isEmpty();
  }

  /** Whether the time under tension more than doubles. */
  public boolean tensionMoreThanDoubles() {
    return tensionFactor.filter(factor -> factor.compareTo(TWO) > 0).isPresent();
  }

  private static int change(LoadVariable variable, At before, At after) {
    Optional<BigDecimal> was = variable.hardness(before);
    Optional<BigDecimal> is = variable.hardness(after);
    return was.isPresent() && is.isPresent() ? is.get().compareTo(was.get()) : 0;
  }

  private static Optional<BigDecimal> tensionFactor(Dose from, Dose to) {
    Optional<BigDecimal> was =
        DoseArithmetic.tensionSeconds(from).filter(seconds -> seconds.signum() > 0);
    return was.flatMap(
        before ->
            DoseArithmetic.tensionSeconds(to)
                .map(after -> after.divide(before, DECIMALS, RoundingMode.UP)));
  }
}
