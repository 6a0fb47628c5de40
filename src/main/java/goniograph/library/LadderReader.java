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
import goniograph.finding.Nearest;
import goniograph.library.LocatedLadder.LocatedStep;
import goniograph.matter.Dotted;
import goniograph.matter.Form;
import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.matter.Spellings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Reads a ladder. */
final class LadderReader {
  private static final int MOST_STEPS = 20;

  private final Consumer<Finding> findings;
  private final DoseReader doses;

  LadderReader(Consumer<Finding> findings) {
    this.findings = findings;
    this.doses = new DoseReader(findings);
  }

  LocatedLadder read(Form form) {
    Optional<Located<Integer>> start =
        form.required("start", "1").as(Spellings.integer(1, MOST_STEPS));
    List<LocatedStep> steps =
        form.required("steps", "[ { n: 1, hold: 10 s } ]")
            .list(value -> value.fields().flatMap(this::step));
    inOrder(steps);
    start.ifPresent(given -> exists(given, steps));
    Ladder ladder =
        new Ladder(
            start.map(Located::value).orElse(1),
            steps.stream().map(LocatedStep::step).toList(),
            form.optional("stay_at_least")
                .as(DoseSpellings.amount(Measure.DAYS))
                .map(Located::value),
            criteria(form, Criterion.Use.UP),
            criteria(form, Criterion.Use.LIMIT),
            criteria(form, Criterion.Use.EVENT),
            decider(form));
    return new LocatedLadder(ladder, steps, form.at());
  }

  private static Optional<Decider> decider(Form form) {
    return form.optional("who_decides").as(Spellings.oneOf(Decider.class)).map(Located::value);
  }

  private Optional<LocatedStep> step(Node.Fields fields) {
    List<Node.Field> leaves = Dotted.leaves(fields);
    List<Node.Field> others =
        leaves.stream().filter(leaf -> DoseField.ofKey(leaf.key()).isEmpty()).toList();
    LocatedDose changes = doses.dose(leaves);
    Form form = new Form(Dotted.nested(others, fields.at()), "a ladder step", findings);
    form.alsoKnown(DoseReader.KEYS);
    Optional<Located<Integer>> n = form.required("n", "1").as(Spellings.integer(1, MOST_STEPS));
    Conditions conditions = ConditionsReader.read(form);
    var stay = form.optional("stay_at_least").as(DoseSpellings.amount(Measure.DAYS));
    Optional<Decider> decider = decider(form);
    form.finish();
    return n.map(
        number ->
            new LocatedStep(
                new Step(
                    number.value(),
                    changes.dose(),
                    typed(others),
                    stay.map(Located::value),
                    decider),
                changes,
                conditions,
                fields.at()));
  }

  private static Map<String, String> typed(List<Node.Field> others) {
    Map<String, String> typed = new TreeMap<>();
    for (Node.Field leaf : others) {
      boolean own = List.of("n", "stay_at_least", "who_decides").contains(leaf.key());
      if (!own && leaf.value() instanceof Node.Scalar scalar) {
        typed.put(leaf.key(), scalar.raw());
      }
    }
    return typed;
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

  private Criteria criteria(Form form, Criterion.Use use) {
    return form.optional(use.key())
        .form(use.key(), inner -> criteria(inner.entries(), use))
        .map(Located::value)
        .orElse(Criteria.NONE);
  }

  private Criteria criteria(List<Form.Entry> entries, Criterion.Use use) {
    Map<Criterion, DoseValue> values = new EnumMap<>(Criterion.class);
    for (Form.Entry entry : entries) {
      Optional<Criterion> criterion =
          Criterion.ofKey(entry.key().value()).filter(known -> known.fits(use));
      if (criterion.isEmpty()) {
        unknown(entry.key(), use);
      } else {
        entry
            .value()
            .as(DoseSpellings.of(criterion.get().type()))
            .ifPresent(value -> values.put(criterion.get(), value.value()));
      }
    }
    return new Criteria(values);
  }

  private void unknown(Located<String> key, Criterion.Use use) {
    List<String> known = new ArrayList<>();
    Arrays.stream(Criterion.values())
        .filter(criterion -> criterion.fits(use))
        .forEach(criterion -> known.add(criterion.key()));
    String hint = Nearest.hint(key.value(), known);
    findings.accept(
        Finding.error(
            "field-unknown",
            key.at(),
            "`"
                + key.value()
                + "` is not a criterion of `"
                + use.key()
                + "`"
                + (hint.isEmpty() ? "." : hint),
            "The patient could not be told when to change the step.",
            "Write one of `" + String.join("`, `", known) + "`."));
  }
}
