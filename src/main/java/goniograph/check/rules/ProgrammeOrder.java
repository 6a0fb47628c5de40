package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ProgrammeRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.PlannedPhase;
import goniograph.library.PlannedPhase.Turn;
import goniograph.library.Programme;
import goniograph.library.ProgrammePlan;
import goniograph.library.Vocabulary.LiesOn;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A programme that sends the patient down to the floor, up, and down again. */
public final class ProgrammeOrder implements ProgrammeRule {
  private static final Set<LiesOn> FLOOR = Set.of(LiesOn.FLOOR, LiesOn.MAT);
  private static final String ON_THE_MAT = "position: sitting\nlies_on: mat\n";

  private static final RulePage PAGE =
      RulePage.of(
          "programme-order",
          "In the order of the programme an exercise on the floor follows one that is not, after an"
              + " earlier one on the floor.",
          "Getting down and up twice is the hardest part of the day, and where people fall.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          example(
              "add: [sh-row-band, ba-heel-toe-stand]", "add: [ba-heel-toe-stand, «sh-row-band»]"));

  private static Example example(String good, String marked) {
    Example base =
        Example.in(ExampleFiles.PROGRAMME, good, marked)
            .insteadOf("add: [ba-heel-toe-stand, sh-row-band]");
    for (String file : List.of(ExampleFiles.CHAIR_RISE, ExampleFiles.BAND)) {
      base =
          base.where(file, "position: sitting\n", ON_THE_MAT)
              .where(file, "statements: [", "statements: [s-floor-rise, ")
              .where(
                  file,
                  "precautions:\n",
                  "precautions:\n  - { tag: cannot-get-to-floor, action: leave-out }\n");
    }
    return base;
  }

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked) {
    return plan.phases().stream().flatMap(this::phase);
  }

  private Stream<Finding> phase(PlannedPhase phase) {
    List<Turn> turns = phase.turns();
    return IntStream.range(1, turns.size())
        .filter(i -> onFloor(turns.get(i)) && !onFloor(turns.get(i - 1)))
        .filter(i -> turns.subList(0, i).stream().anyMatch(ProgrammeOrder::onFloor))
        .mapToObj(i -> finding(turns.get(i - 1).exercise(), turns.get(i)));
  }

  private static boolean onFloor(Turn turn) {
    return turn.exercise().liesOn().filter(place -> FLOOR.contains(place.value())).isPresent();
  }

  private Finding finding(Exercise before, Turn turn) {
    return warning(
        turn.named(),
        "`" + turn.exercise().id() + "` goes down to the floor a second time.",
        "Put the exercises on the floor one after the other: this one before `"
            + before.id()
            + "`.");
  }
}
