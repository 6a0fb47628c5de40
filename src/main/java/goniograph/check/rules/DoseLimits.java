package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.dose.Unit;
import goniograph.finding.Finding;
import goniograph.library.DoseLimit;
import goniograph.library.Exercise;
import goniograph.library.Precaution.Within;
import goniograph.library.Rung;
import goniograph.matter.Spellings;
import goniograph.source.Span;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

/** A dose outside the limits of its type of exercise. */
public final class DoseLimits implements RungRule {
  private static final String TEMPO = "tempo";

  private static final RulePage PAGE =
      RulePage.of(
          "dose-limit",
          "A value of the dose is outside the limits that the clinic's table sets for this type of"
              + " exercise: an error. Outside the table's `warn`, where it has one: a warning. At a"
              + " limit is inside. Of a range the top counts.",
          "Too much is harm, too little is no treatment; most often it is a slip of the pen.",
          "Each row of shared/rules/dose-limits.yaml names its own",
          Acceptance.SIGNED_TABLE,
          Example.in(
              ExampleFiles.HEEL_TO_TOE, "    - { n: 2, hold: 30 s,", "    - { n: 2, hold: «90 s»,"),
          Example.in(
              ExampleFiles.BAND,
              "days_per_week: 3, rest_day_between: true }",
              "days_per_week: «5» }"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    return checked.library().limits().stream()
        .filter(limit -> applies(limit, exercise, rung.dose().dose()))
        .flatMap(limit -> finding(limit, rung).stream());
  }

  private static boolean applies(DoseLimit limit, Exercise exercise, Dose dose) {
    int effort = dose.effort().flatMap(Range::high).orElse(0);
    return limit.type().filter(type -> type != exercise.type().value()).isEmpty()
        && limit.aim().filter(aim -> aim != exercise.aim().value()).isEmpty()
        && limit.fromEffort().filter(least -> effort < least).isEmpty();
  }

  private Optional<Finding> finding(DoseLimit limit, Rung rung) {
    Optional<BigDecimal> value = value(limit.field().value(), rung.dose().dose());
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Span at = place(limit.field().value(), rung);
    String what = what(limit, value.get());
    if (outside(limit.limit().value(), value.get())) {
      return Optional.of(
          cited(error(at, what, mend(limit.limit().value())), limit, rung, value.get()));
    }
    return limit
        .warn()
        .filter(edge -> outside(edge.value(), value.get()))
        .map(edge -> cited(warning(at, what, mend(edge.value())), limit, rung, value.get()));
  }

  private static Finding cited(Finding finding, DoseLimit limit, Rung rung, BigDecimal value) {
    String typed = shown(limit, value);
    return finding
        .withBecause(Words.onStep(rung.n(), limit.field().value() + " " + typed))
        .withSource(limit.source().value());
  }

  private static String what(DoseLimit limit, BigDecimal value) {
    return "`"
        + limit.field().value()
        + "` is "
        + shown(limit, value)
        + ", the limit"
        + limit.type().map(type -> " for " + Spellings.word(type)).orElse("")
        + limit.aim().map(aim -> " for " + Spellings.word(aim)).orElse("")
        + limit.fromEffort().map(effort -> " from effort " + effort).orElse("")
        + " is "
        + spelling(limit.limit().value())
        + ".";
  }

  private static String mend(Within within) {
    return "Write a value within "
        + spelling(within)
        + ", or have the row of the table changed and signed.";
  }

  private static String shown(DoseLimit limit, BigDecimal base) {
    Optional<Unit> unit =
        limit.limit().value() instanceof Within.Amounts amounts
            ? amounts.range().high().or(amounts.range()::low).map(Quantity::unit)
            : Optional.empty();
    Optional<Quantity> amount = unit.flatMap(known -> inUnit(base, known));
    return amount.map(Quantity::toString).orElse(base.stripTrailingZeros().toPlainString());
  }

  private static Optional<Quantity> inUnit(BigDecimal base, Unit unit) {
    return java.util.Arrays.stream(Unit.values())
        .filter(u -> u.dimension() == unit.dimension() && u.inBase().compareTo(BigDecimal.ONE) == 0)
        .findFirst()
        .flatMap(u -> new Quantity(base, u).in(unit));
  }

  private static String spelling(Within within) {
    if (within instanceof Within.Amounts amounts) {
      return "`" + amounts.range() + "`";
    }
    return within instanceof Within.Counts counts
        ? "`" + counts.range() + "`"
        : "`" + ((Within.Word) within).word() + "`";
  }

  private static boolean outside(Within within, BigDecimal value) {
    if (within instanceof Within.Amounts amounts) {
      return below(value, amounts.range().low().map(Quantity::inBase))
          || above(value, amounts.range().high().map(Quantity::inBase));
    }
    return within instanceof Within.Counts counts
        && (below(value, counts.range().low().map(BigDecimal::valueOf))
            || above(value, counts.range().high().map(BigDecimal::valueOf)));
  }

  private static boolean below(BigDecimal value, Optional<BigDecimal> low) {
    return low.filter(end -> value.compareTo(end) < 0).isPresent();
  }

  private static boolean above(BigDecimal value, Optional<BigDecimal> high) {
    return high.filter(end -> value.compareTo(end) > 0).isPresent();
  }

  /** The value in its base unit; of a range the top. */
  private static Optional<BigDecimal> value(String key, Dose dose) {
    if (key.equals(TEMPO)) {
      return dose.tempo().stream().map(Quantity::inBase).reduce(BigDecimal::add);
    }
    return DoseField.ofKey(key)
        .flatMap(
            field ->
                dose.amount(field)
                    .map(Quantity::inBase)
                    .or(() -> dose.count(field).stream().mapToObj(BigDecimal::valueOf).findFirst())
                    .or(() -> scores(field, dose)));
  }

  private static Optional<BigDecimal> scores(DoseField field, Dose dose) {
    return field == DoseField.EFFORT
        ? dose.effort().flatMap(Range::high).map(BigDecimal::valueOf)
        : Optional.empty();
  }

  private static Span place(String key, Rung rung) {
    return DoseField.ofKey(key)
        .flatMap(rung.dose()::at)
        .or(() -> tempoPlace(rung))
        .orElse(rung.at());
  }

  private static Optional<Span> tempoPlace(Rung rung) {
    return rung.dose().places().entrySet().stream()
        .filter(place -> place.getKey().key().startsWith(TEMPO + "."))
        .map(java.util.Map.Entry::getValue)
        .findFirst();
  }
}
