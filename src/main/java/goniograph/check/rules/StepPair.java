package goniograph.check.rules;

import goniograph.check.Checked;
import goniograph.dose.DoseField;
import goniograph.dose.DoseValue;
import goniograph.dose.LoadVariable;
import goniograph.dose.StepChange;
import goniograph.finding.Level;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Stock;
import goniograph.matter.Located;
import goniograph.source.Span;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Two neighbouring steps of a ladder, and what changes from the lower to the upper. */
record StepPair(Rung below, Rung step, StepChange change) {

  /**
   * All pairs from the bottom of which nothing graver is known: a value outside its limit is said
   * once, and not again as a step too far.
   */
  static List<StepPair> of(Exercise exercise, Checked checked) {
    List<Rung> rungs = exercise.rungs();
    return IntStream.range(1, rungs.size())
        .filter(i -> within(exercise, rungs.get(i - 1), checked))
        .filter(i -> within(exercise, rungs.get(i), checked))
        .mapToObj(i -> of(rungs.get(i - 1), rungs.get(i), checked.library().stock()))
        .toList();
  }

  private static boolean within(Exercise exercise, Rung rung, Checked checked) {
    return Breach.all(checked.library().limits(), exercise, rung).stream()
        .noneMatch(breach -> breach.level() == Level.ERROR);
  }

  private static StepPair of(Rung below, Rung step, Stock stock) {
    return new StepPair(below, step, StepChange.between(below.load(), step.load(), stock.tables()));
  }

  /**
   * Whether the steps are drawn from different poses, of which nobody can say here what is harder.
   */
  boolean otherFigure() {
    return !figure(below).equals(figure(step));
  }

  private static Optional<String> figure(Rung rung) {
    return rung.conditions().figure().map(Located::value);
  }

  /** Where the upper step says one of these, or else where it stands. */
  Span place(Stream<LoadVariable> variables) {
    return variables
        .flatMap(variable -> variable.fields().stream())
        .flatMap(field -> step.dose().at(field).stream())
        .filter(this::inStep)
        .findFirst()
        .orElse(step.at());
  }

  private boolean inStep(Span at) {
    return at.start() >= step.at().start() && at.end() <= step.at().end();
  }

  /** {@code load.mass from 2 kg to 3.5 kg}. */
  String rise(LoadVariable variable) {
    return variable.fields().stream()
        .filter(field -> step.dose().dose().get(field).isPresent())
        .map(
            field ->
                "`"
                    + field.key()
                    + "` from "
                    + spelled(below, field)
                    + " to "
                    + spelled(step, field))
        .findFirst()
        .orElse("`" + variable.label() + "`");
  }

  private static String spelled(Rung rung, DoseField field) {
    return rung.dose().dose().get(field).map(DoseValue::spelling).orElse("nothing");
  }

  /** {@code `sets`, `rep time`}. */
  static String listed(Collection<LoadVariable> variables) {
    return variables.stream()
        .map(variable -> "`" + variable.label() + "`")
        .collect(Collectors.joining(", "));
  }

  /** {@code from step 2 to step 3}. */
  String steps() {
    return "from step " + below.n() + " to step " + step.n();
  }
}
