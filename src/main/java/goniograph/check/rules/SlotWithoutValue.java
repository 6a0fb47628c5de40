package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.SlotTable;
import goniograph.dose.DoseField;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.matter.Inline;
import java.util.Optional;
import java.util.stream.Stream;

/** A slot whose field the exercise does not give. */
public final class SlotWithoutValue implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "slot-without-value",
          "The text has a slot, and the dose, the support or the sides give nothing to fill it with"
              + " on some step.",
          "The sentence would have a hole where the patient looks for a number.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.CHAIR_RISE, "Take {tempo.lower}.", "Wait for «{hold}».")
              .alongside(ExampleFiles.CHAIR_RISE_ARABIC, "{tempo.lower}", "{hold}"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    if (!checked.readWell(exercise)) {
      return Stream.empty();
    }
    return exercise.text().pieces().stream()
        .flatMap(piece -> piece.slots().stream())
        .flatMap(slot -> gap(slot, exercise, rung).map(gap -> finding(slot, gap, rung)).stream());
  }

  private Finding finding(Inline.Slot slot, String gap, Rung rung) {
    return error(
            slot.at(),
            "`{" + slot.name() + "}` has no value: " + gap + ".",
            "Give the field in front matter, or take the slot out of the sentence.")
        .withBecause("step " + rung.n());
  }

  private static Optional<String> gap(Inline.Slot slot, Exercise exercise, Rung rung) {
    String name = slot.name();
    Optional<DoseField> field = SlotTable.field(name);
    if (field.isPresent()) {
      return dose(name, field.get(), exercise, rung);
    }
    if (name.equals("load") && !SlotTable.hasLoad(rung.dose().dose())) {
      return Optional.of("there is neither `load.mass` nor `load.band`");
    }
    if (name.equals("support") && rung.conditions().support().need().isEmpty()) {
      return Optional.of("there is no `support.need`");
    }
    return SlotTable.isSide(name) && !exercise.sides().value().countRequired()
        ? Optional.of("this exercise has no left and right")
        : Optional.empty();
  }

  private static Optional<String> dose(String name, DoseField field, Exercise exercise, Rung rung) {
    Optional<String> step = SlotTable.step(name);
    if (step.isEmpty()) {
      return lacks(rung, field);
    }
    int n =
        switch (step.get()) {
          case "previous" -> Math.max(1, rung.n() - 1);
          case "next" -> Math.min(exercise.rungs().size(), rung.n() + 1);
          default -> Integer.parseInt(step.get());
        };
    return exercise
        .rung(n)
        .map(there -> lacks(there, field))
        .orElse(Optional.of("there is no step " + n));
  }

  private static Optional<String> lacks(Rung rung, DoseField field) {
    return rung.dose().dose().get(field).isPresent()
        ? Optional.empty()
        : Optional.of("step " + rung.n() + " gives no `" + field.key() + "`");
  }
}
