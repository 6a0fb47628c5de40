package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.check.Checked;
import goniograph.check.Derived;
import goniograph.check.Example;
import goniograph.check.PrintedStatements;
import goniograph.library.Exercise;
import goniograph.library.Statement;
import goniograph.library.Vocabulary.Urgency;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What follows from the properties of a step. */
class DerivedTest {
  private static Checked checked(Example.Edit... edits) {
    return ExampleLibrary.checked(ExampleLibrary.with(List.of(edits)));
  }

  private static Exercise exercise(Checked checked, String id) {
    return checked.library().exercise(id).orElseThrow();
  }

  private static Derived derived(Checked checked, String id, int step) {
    Exercise exercise = exercise(checked, id);
    return Derived.of(
        checked.library(), checked.poses(), exercise, exercise.rung(step).orElseThrow());
  }

  private static List<String> printed(Checked checked, String id, int step, Urgency urgency) {
    Exercise exercise = exercise(checked, id);
    return PrintedStatements.of(
            checked.library(), checked.poses(), exercise, exercise.rung(step).orElseThrow())
        .of(urgency)
        .stream()
        .map(Statement::id)
        .map(id2 -> id2.value())
        .toList();
  }

  /** The worked example of the brief: only the step with head movement needs a helper. */
  @Test
  void aStatementThatOnlyAnotherStepNeedsDoesNotPrint() {
    Checked checked = checked();
    for (int step = 1; step <= 3; step++) {
      assertEquals(
          List.of("s-fall", "s-worse"),
          printed(checked, "ba-heel-toe-stand", step, Urgency.CALL_US));
      assertEquals(
          List.of("s-support"), printed(checked, "ba-heel-toe-stand", step, Urgency.CAUTION));
    }
    assertEquals(
        List.of("s-dizzy-stop", "s-fall", "s-worse"),
        printed(checked, "ba-heel-toe-stand", 4, Urgency.CALL_US));
    assertEquals(
        List.of("s-support", "s-helper"),
        printed(checked, "ba-heel-toe-stand", 4, Urgency.CAUTION));
  }

  @Test
  void theReasonNamesTheProperty() {
    Derived step = derived(checked(), "ba-heel-toe-stand", 4);
    assertEquals("head_movement true", step.by("harder-balance").get(0).reason().words());
    assertEquals("stance tandem", step.by("support-when-unsteady").get(0).reason().words());
    assertTrue(step.by("breathe-on-effort").isEmpty(), "a balance hold is no held effort");
  }

  /** Effort 5 of "4..5": the top of a range counts, and 5 itself is reached. */
  @Test
  void theTopOfARangeCounts() {
    assertEquals(
        "effort up to 5",
        derived(checked(), "sh-row-band", 1).by("breathe-on-effort").get(0).reason().words());
    assertTrue(derived(checked(), "hp-chair-rise", 1).by("breathe-on-effort").isEmpty());
  }

  @Test
  void anIsometricHoldOfFiveSecondsIsReachedByFiveNotByFour() {
    String type = "type: dynamic\n";
    String tempo = "  tempo: { lift: 2 s, pause: 1 s, lower: 3 s }\n";
    String file = ExampleFiles.BAND;
    Example.Edit isometric = new Example.Edit(file, type, "type: isometric\n");
    Example.Edit gentle = new Example.Edit(file, "effort: 4..5", "effort: 3..4");
    Checked five = checked(isometric, gentle, new Example.Edit(file, tempo, "  hold: 5 s\n"));
    Checked four = checked(isometric, gentle, new Example.Edit(file, tempo, "  hold: 4 s\n"));
    assertEquals(
        "hold 5 s",
        derived(five, "sh-row-band", 1).by("breathe-on-effort").get(0).reason().words());
    assertTrue(derived(four, "sh-row-band", 1).by("breathe-on-effort").isEmpty());
  }

  /** One foot off the floor is seen in the solved pose, whatever the fields say. */
  @Test
  void theSolvedPoseMakesARuleFire() {
    String pose = "figures/ba-heel-toe-stand.yaml";
    Checked lifted =
        checked(
            new Example.Edit(ExampleFiles.HEEL_TO_TOE, "stance: tandem", "stance: hip"),
            new Example.Edit(pose, "contacts: [feet on floor,", "contacts: [left foot on floor,"),
            new Example.Edit(
                pose,
                "  hip right: \"flexion 9, adduction 6, external rotation 0\"\n",
                "  hip right: flexion 50\n  knee right: flexion 70\n"));
    assertEquals(
        "in the figure: one foot is off the floor",
        derived(lifted, "ba-heel-toe-stand", 1)
            .by("support-when-unsteady")
            .get(0)
            .reason()
            .words());
    Checked hip =
        checked(new Example.Edit(ExampleFiles.HEEL_TO_TOE, "stance: tandem", "stance: hip"));
    assertFalse(
        derived(hip, "ba-heel-toe-stand", 1).statements().contains("s-support"),
        "both feet flat at hip width are steady");
  }
}
