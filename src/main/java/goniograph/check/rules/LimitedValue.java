package goniograph.check.rules;

import goniograph.dose.Dose;
import goniograph.dose.DoseArithmetic;
import goniograph.dose.DoseField;
import goniograph.dose.DoseValue;
import goniograph.dose.Quantity;
import goniograph.dose.Unit;
import goniograph.dose.Workload;
import goniograph.library.DoseLimit;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;

/** What a step has of the things that the table of limits can name. */
final class LimitedValue {
  private LimitedValue() {}

  /** The value, given or worked out; nothing where the step does not say enough. */
  static Optional<DoseValue> of(String field, Exercise exercise, Rung rung) {
    Dose dose = rung.dose().dose();
    return switch (field) {
      case DoseLimit.TEMPO -> seconds(sum(dose));
      case DoseLimit.TENSION -> seconds(DoseArithmetic.tensionSeconds(dose));
      case DoseLimit.SESSION -> worked(exercise, dose, Workload::sessionSeconds);
      case DoseLimit.DAY -> worked(exercise, dose, Workload::daySeconds);
      case DoseLimit.WARM_UP -> exercise.warmUp().map(given -> new DoseValue.Word(given.value()));
      default -> DoseField.ofKey(field).flatMap(dose::get);
    };
  }

  /** As one number in the base unit of its measure; of a range the top. Words have none. */
  static Optional<BigDecimal> number(DoseValue value) {
    if (value instanceof DoseValue.Amount amount) {
      return Optional.of(amount.quantity().inBase());
    }
    if (value instanceof DoseValue.Count count) {
      return Optional.of(BigDecimal.valueOf(count.number()));
    }
    return value instanceof DoseValue.Scores scores
        ? scores.range().high().map(BigDecimal::valueOf)
        : Optional.empty();
  }

  private static Optional<BigDecimal> sum(Dose dose) {
    return dose.tempo().stream().map(Quantity::inBase).reduce(BigDecimal::add);
  }

  private static Optional<DoseValue> worked(
      Exercise exercise, Dose dose, Function<Workload, BigDecimal> part) {
    return seconds(DoseArithmetic.workload(dose, exercise.sides().value()).map(part));
  }

  private static Optional<DoseValue> seconds(Optional<BigDecimal> seconds) {
    return seconds.map(time -> new DoseValue.Amount(new Quantity(time, Unit.SECOND)));
  }
}
