package goniograph.library;

import goniograph.dose.Criteria;
import goniograph.dose.Criterion;
import goniograph.dose.Decider;
import goniograph.dose.DoseField;
import goniograph.dose.DoseValue;
import goniograph.dose.Ladder;
import goniograph.dose.Measure;
import goniograph.dose.Step;
import goniograph.finding.Finding;
import goniograph.library.LocatedLadder.LocatedStep;
import goniograph.matter.Dotted;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spellings;
import goniograph.matter.Value;
import goniograph.source.Span;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads a ladder. */
final class LadderReader {
  static final int MOST_STEPS = 20;

  private final Consumer<Finding> findings;
  private final DoseReader doses;

  LadderReader(Consumer<Finding> findings) {
    this.findings = findings;
    this.doses = new DoseReader(findings);
  }

  LocatedLadder read(Form form) {
    Optional<Located<Integer>> start =
        form.required("start", "1").as(Spellings.integer(1, MOST_STEPS));
    List<LocatedStep> steps = form.required("steps", "[ { n: 1, hold: 10 s } ]").list(this::step);
    inOrder(steps);
    start.ifPresent(given -> exists(given, steps));
    Map<Criterion.Use, Map<Criterion, Span>> places = new EnumMap<>(Criterion.Use.class);
    Ladder ladder =
        new Ladder(
            start.map(Located::value).orElse(1),
            steps.stream().map(LocatedStep::step).toList(),
            form.optional("stay_at_least")
                .as(DoseSpellings.amount(Measure.DAYS))
                .map(Located::value),
            criteria(form, Criterion.Use.UP, places),
            criteria(form, Criterion.Use.LIMIT, places),
            criteria(form, Criterion.Use.EVENT, places),
            decider(form));
    return new LocatedLadder(ladder, steps, places, form.at());
  }

  private static Optional<Decider> decider(Form form) {
    return form.optional("who_decides").as(Spellings.oneOf(Decider.class)).map(Located::value);
  }

  private Optional<LocatedStep> step(Value value) {
    List<Node.Field> leaves = value.leaves(DoseReader.SPELLINGS);
    List<Node.Field> others =
        leaves.stream().filter(leaf -> DoseField.ofKey(leaf.key()).isEmpty()).toList();
    LocatedDose changes = doses.dose(leaves);
    return value
        .changed("a ladder step", fields -> Dotted.nested(others, fields.at()))
        .flatMap(form -> step(form, changes));
  }

  private static Optional<LocatedStep> step(Form form, LocatedDose changes) {
    form.alsoKnown(DoseReader.KEYS);
    Optional<Located<Integer>> n = form.required("n", "1").as(Spellings.integer(1, MOST_STEPS));
    Conditions conditions = ConditionsReader.read(form);
    var stay = form.optional("stay_at_least").as(DoseSpellings.amount(Measure.DAYS));
    Optional<Decider> decider = decider(form);
    List<RangeLimit> range = ExerciseReader.range(form);
    form.finish();
    return n.map(
        number ->
            new LocatedStep(
                new Step(number.value(), changes.dose(), stay.map(Located::value), decider),
                changes,
                conditions,
                range,
                form.at()));
  }

  private void inOrder(List<LocatedStep> steps) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).step().n() != i + 1) {
        findings.accept(
            Finding.error(
                "ladder-order",
                steps.get(i).at(),
                "This step is number "
                    + steps.get(i).step().n()
                    + ", but stands as "
                    + (i + 1)
                    + ".",
                "Patient and therapist count the steps from the bottom.",
                "Number the steps 1, 2, 3 … in the order of the file."));
        return;
      }
    }
  }

  private void exists(Located<Integer> start, List<LocatedStep> steps) {
    if (steps.stream().noneMatch(step -> step.step().n() == start.value())) {
      findings.accept(
          Finding.error(
              "ladder-order",
              start.at(),
              "There is no step " + start.value() + " to start on.",
              "The sheet would not know where to begin.",
              "Write the number of a step."));
    }
  }

  private static Criteria criteria(
      Form form, Criterion.Use use, Map<Criterion.Use, Map<Criterion, Span>> places) {
    Map<Criterion, Span> own = new EnumMap<>(Criterion.class);
    places.put(use, own);
    return form.optional(use.key())
        .form(use.key(), inner -> measured(inner, use, own))
        .map(Located::value)
        .orElse(Criteria.NONE);
  }

  private static Criteria measured(Form form, Criterion.Use use, Map<Criterion, Span> places) {
    Map<Criterion, DoseValue> values = new EnumMap<>(Criterion.class);
    for (Criterion criterion : Criterion.values()) {
      if (criterion.fits(use)) {
        form.optional(criterion.key())
            .as(DoseSpellings.of(criterion.type()))
            .ifPresent(
                value -> {
                  values.put(criterion, value.value());
                  places.put(criterion, value.at());
                });
      }
    }
    return new Criteria(values);
  }
}
