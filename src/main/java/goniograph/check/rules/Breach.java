package goniograph.check.rules;

import goniograph.dose.DoseField;
import goniograph.dose.DoseValue;
import goniograph.dose.Quantity;
import goniograph.finding.Level;
import goniograph.library.DoseLimit;
import goniograph.library.Exercise;
import goniograph.library.Precaution.Within;
import goniograph.library.Rung;
import goniograph.source.Span;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A row of the table of limits, and the end of it that a value of a step lies beyond.
 *
 * @param level an error beyond the limit, a warning beyond the edge before it
 * @param value the value as a finding shows it
 * @param at where the value stands; of a time that is worked out, where the factor stands that is
 *     nearest to a limit of its own
 */
record Breach(DoseLimit row, Level level, Bounds.Passed passed, String value, Span at) {
  private static final List<DoseField> TEMPO =
      List.of(
          DoseField.TEMPO_LIFT,
          DoseField.TEMPO_PAUSE,
          DoseField.TEMPO_LOWER,
          DoseField.TEMPO_BOTTOM);
  private static final List<DoseField> FACTORS =
      Stream.concat(
              Stream.of(
                  DoseField.HOLD,
                  DoseField.REPS,
                  DoseField.SETS,
                  DoseField.PER_DAY,
                  DoseField.RELAX,
                  DoseField.REST),
              TEMPO.stream())
          .toList();

  /**
   * What a step breaches, in the order of the table. A time that is worked out from a value that
   * breaches a limit of its own is left out: it would say the same mistake again.
   */
  static List<Breach> all(List<DoseLimit> rows, Exercise exercise, Rung rung) {
    List<DoseLimit> covering = rows.stream().filter(row -> row.covers(exercise, rung)).toList();
    List<Breach> all = all(covering, rung, exercise);
    boolean grave = all.stream().anyMatch(Breach::graveInItself);
    return all.stream().filter(breach -> !grave || breach.ofAField()).toList();
  }

  private boolean graveInItself() {
    return level == Level.ERROR && ofAField();
  }

  /** The tempo is a field as people write it, though each of its parts is one of the dose. */
  private boolean ofAField() {
    String field = row.field().value();
    return field.equals(DoseLimit.TEMPO) || DoseField.ofKey(field).isPresent();
  }

  private static List<Breach> all(List<DoseLimit> covering, Rung rung, Exercise exercise) {
    return covering.stream()
        .flatMap(
            row ->
                LimitedValue.of(row.field().value(), exercise, rung)
                    .flatMap(value -> of(row, value, place(row, covering, rung)))
                    .stream())
        .toList();
  }

  private static Optional<Breach> of(DoseLimit row, DoseValue value, Span at) {
    Optional<BigDecimal> number = LimitedValue.number(value);
    return number
        .flatMap(given -> breach(row, Level.ERROR, row.limit().value(), given, value, at))
        .or(
            () ->
                number.flatMap(
                    given ->
                        row.warn()
                            .flatMap(
                                edge ->
                                    breach(row, Level.WARNING, edge.value(), given, value, at))));
  }

  private static Optional<Breach> breach(
      DoseLimit row, Level level, Within within, BigDecimal number, DoseValue value, Span at) {
    return Bounds.of(within)
        .passed(number)
        .map(passed -> new Breach(row, level, passed, shown(row, value, passed), at));
  }

  /** As typed; where it was worked out, in the unit of the row. */
  private static String shown(DoseLimit row, DoseValue value, Bounds.Passed passed) {
    boolean workedOut = DoseLimit.WORKED_OUT.contains(row.field().value());
    if (workedOut && value instanceof DoseValue.Amount amount) {
      Optional<Quantity> like = passed.unit().flatMap(amount.quantity()::in);
      return like.orElse(amount.quantity()).toString();
    }
    return value.spelling();
  }

  private static Span place(DoseLimit row, List<DoseLimit> rows, Rung rung) {
    String field = row.field().value();
    if (field.equals(DoseLimit.TEMPO)) {
      return first(TEMPO, rung);
    }
    return DoseField.ofKey(field)
        .map(known -> first(List.of(known), rung))
        .orElseGet(() -> first(byNearness(rows, rung), rung));
  }

  private static Span first(List<DoseField> fields, Rung rung) {
    return fields.stream()
        .flatMap(one -> rung.dose().at(one).stream())
        .findFirst()
        .orElse(rung.at());
  }

  private static List<DoseField> byNearness(List<DoseLimit> rows, Rung rung) {
    return FACTORS.stream()
        .sorted(Comparator.comparing(field -> nearness(field, rows, rung).negate()))
        .toList();
  }

  /** The value as a share of its own narrowest limit; 0 where either is not given. */
  private static BigDecimal nearness(DoseField field, List<DoseLimit> rows, Rung rung) {
    Optional<BigDecimal> top =
        rows.stream()
            .filter(row -> row.field().value().equals(field.key()))
            .flatMap(row -> Bounds.of(row.limit().value()).high().stream())
            .map(Bounds.End::number)
            .filter(end -> end.signum() > 0)
            .min(Comparator.naturalOrder());
    return rung.dose()
        .dose()
        .get(field)
        .flatMap(LimitedValue::number)
        .flatMap(value -> top.map(end -> value.divide(end, MathContext.DECIMAL64)))
        .orElse(BigDecimal.ZERO);
  }
}
