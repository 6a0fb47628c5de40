package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.dose.DoseField;
import goniograph.dose.Quantity;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Stock;
import goniograph.matter.Located;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A seat or step of a height that the clinic does not have. */
public final class HeightNotInStock implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "height-not-in-stock",
          "`seat_height` or `step_height` is not one of the heights in the clinic's tables.",
          "The patient cannot practise at the clinic what the sheet asks for at home.",
          RulePage.HOUSE,
          Acceptance.CLINICIAN,
          Example.in(ExampleFiles.CHAIR_RISE, "seat_height: 42 cm", "seat_height: «43 cm»"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    Stock stock = checked.library().stock();
    return Stream.concat(
            finding(DoseField.SEAT_HEIGHT, stock.seats(), rung),
            finding(DoseField.STEP_HEIGHT, stock.steps(), rung))
        .filter(finding -> !graver(exercise, rung, checked));
  }

  /** Whether the step is outside its limits or too far from the one below: then that is said. */
  private static boolean graver(Exercise exercise, Rung rung, Checked checked) {
    return !Breach.all(checked.library().limits(), exercise, rung).isEmpty()
        || StepPair.of(exercise, checked).stream()
            .anyMatch(pair -> pair.step().n() == rung.n() && !pair.change().jumps().isEmpty());
  }

  private Stream<Finding> finding(DoseField field, List<Located<Quantity>> table, Rung rung) {
    return rung.dose().dose().amount(field).stream()
        .filter(height -> table.stream().noneMatch(item -> item.value().compareTo(height) == 0))
        .map(
            height ->
                warning(
                        rung.dose().at(field).orElse(rung.at()),
                        "The clinic's table has no height of " + height + ".",
                        "Write one of " + listed(table) + ", or add it to `shared/bands.yaml`.")
                    .withBecause(Words.onStep(rung.n(), field.key() + " " + height)));
  }

  private static String listed(List<Located<Quantity>> table) {
    return table.stream().map(item -> "`" + item.value() + "`").collect(Collectors.joining(", "));
  }
}
