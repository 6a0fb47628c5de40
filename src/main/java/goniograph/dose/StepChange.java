package goniograph.dose;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What changes from one step of a ladder to the next.
 *
 * @param raised what makes it harder
 * @param lowered what makes it easier
 * @param jumps the loads that rise too far
 * @param comparable whether all that one of them names can be held against the other; of a band
 *     that the tables lack nobody knows
 * @param tensionFactor by what the time under tension is multiplied, if it can be worked out
 */
public record StepChange(
    Set<LoadVariable> raised,
    Set<LoadVariable> lowered,
    List<Jump> jumps,
    boolean comparable,
    Optional<BigDecimal> tensionFactor) {
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final int DECIMALS = 3;

  public StepChange {
    raised = Collections.unmodifiableSet(raised);
    lowered = Collections.unmodifiableSet(lowered);
    jumps = List.copyOf(jumps);
  }

  /**
   * A load that rises by more than 10 % and past the next item of the clinic's table.
   *
   * @param next the next item, if there is one
   */
  public record Jump(LoadVariable variable, Optional<String> next) {}

  /** Compares two steps. A variable that only one of them names does not count. */
  public static StepChange between(StepLoad from, StepLoad to, StockTables stock) {
    Set<LoadVariable> raised = EnumSet.noneOf(LoadVariable.class);
    Set<LoadVariable> lowered = EnumSet.noneOf(LoadVariable.class);
    List<Jump> jumps = new ArrayList<>();
    boolean comparable = true;
    for (LoadVariable variable : LoadVariable.values()) {
      Optional<BigDecimal> was = variable.hardness(from, stock);
      Optional<BigDecimal> is = variable.hardness(to, stock);
      comparable &= was.isPresent() == is.isPresent();
      int change = was.isPresent() && is.isPresent() ? is.get().compareTo(was.get()) : 0;
      if (change != 0) {
        (change > 0 ? raised : lowered).add(variable);
      }
      if (change > 0) {
        jump(variable, was.get(), is.get(), stock).ifPresent(jumps::add);
      }
    }
    return new StepChange(
        raised, lowered, jumps, comparable, tensionFactor(from.dose(), to.dose()));
  }

  /** Whether something gets harder. */
  public boolean raisesOne() {
    return !raised.isEmpty();
  }

  /** The words about balance that get harder. */
  public List<LoadVariable> raisedBalance() {
    return raised.stream().filter(LoadVariable::ofBalance).toList();
  }

  /** Whether a load or the time under tension rises too far. */
  public boolean tooFar() {
    return !jumps.isEmpty() || tensionMoreThanDoubles();
  }

  /** Whether the time under tension more than doubles. */
  public boolean tensionMoreThanDoubles() {
    return tensionFactor.filter(factor -> factor.compareTo(TWO) > 0).isPresent();
  }

  /** A first load on a step without one is no jump: what one begins with has limits of its own. */
  private static Optional<Jump> jump(
      LoadVariable variable, BigDecimal was, BigDecimal is, StockTables stock) {
    Optional<List<LoadVariable.Item>> items = variable.items(stock);
    if (items.isEmpty() || was.signum() == 0) {
      return Optional.empty();
    }
    Optional<LoadVariable.Item> next =
        items.get().stream().filter(item -> item.hardness().compareTo(was) > 0).findFirst();
    return DoseArithmetic.smallStep(was, is, next.map(LoadVariable.Item::hardness))
        ? Optional.empty()
        : Optional.of(new Jump(variable, next.map(LoadVariable.Item::spelling)));
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
