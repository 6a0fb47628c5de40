package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Equipment;
import goniograph.library.EquipmentCheck;
import goniograph.library.Exercise;
import goniograph.matter.Located;
import java.util.stream.Stream;

/** A thing that must be looked over before use, and the entry does not say so. */
public final class EquipmentUnchecked implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "equipment-unchecked",
          "A piece of equipment lacks the `check` that the clinic's table asks for.",
          "A nick in a band, or a door that opens, is seen before the exercise or felt during it.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          Example.in(
              ExampleFiles.BAND,
              "{ id: door-anchor, check: door-closed-opens-away }",
              "{ id: «door-anchor» }"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    return checked.library().equipmentChecks().stream()
        .flatMap(
            row ->
                exercise.equipment().stream()
                    .filter(thing -> thing.check().isEmpty() && named(row, thing))
                    .map(
                        thing ->
                            warning(
                                thing.id().at(),
                                "Nothing says what to look at before `"
                                    + thing.id().value()
                                    + "` is used.",
                                "Write `{ id: "
                                    + thing.id().value()
                                    + ", check: "
                                    + row.check().value()
                                    + " }`.")));
  }

  private static boolean named(EquipmentCheck row, Equipment thing) {
    return row.equipment().stream().map(Located::value).anyMatch(thing.id().value()::equals);
  }
}
