package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.check.Example;
import goniograph.check.Poses;
import goniograph.check.StepTailoring;
import goniograph.check.Tailoring;
import goniograph.dose.DoseField;
import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.dose.Unit;
import goniograph.library.Library;
import goniograph.library.TagRule;
import goniograph.library.Vocabulary.Action;
import goniograph.library.Vocabulary.Feet;
import goniograph.source.MemoryFiles;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What follows for an entry and the tags of a situation. The outcomes are the brief's table 5.7.
 */
class TailoringTest {
  private static final MemoryFiles FILES = (MemoryFiles) ExampleLibrary.with(List.of());

  static {
    SampleExercises.in(
        FILES,
        "kn-step-up",
        Map.of(
            "region",
            "[knee]",
            "type",
            "functional",
            "position",
            "stepping",
            "support",
            "{ object: rail, need: one-hand, reach: ..15 cm }",
            "dose",
            dose("step_height: 10 cm, tempo: { lift: 2 s, lower: 2 s }, effort: 3..4")));
    SampleExercises.in(
        FILES,
        "bk-bridge",
        Map.of(
            "region",
            "[low-back]",
            "type",
            "dynamic",
            "position",
            "lying-on-back",
            "lies_on",
            "bed",
            "dose",
            dose("tempo: { lift: 2 s, pause: 3 s, lower: 2 s }, effort: 3..4")
                .replace("reps: 8", "reps: 10")));
    SampleExercises.in(
        FILES,
        "bk-rock",
        Map.of(
            "region",
            "[low-back]",
            "position",
            "lying-on-back",
            "lies_on",
            "bed",
            "dose",
            dose("tempo: { lift: 3 s, lower: 3 s }, effort: 1..2").replace("reps: 8", "reps: 10"),
            "precautions",
            "[ { tag: pregnant-avoid-lying-flat, action: adapt,"
                + " swap: { bk-rock: bk-rock-sitting } } ]"));
    SampleExercises.in(FILES, "bk-rock-sitting", Map.of("region", "[low-back]"));
    SampleExercises.in(
        FILES,
        "sh-turnout-hold",
        Map.of(
            "region",
            "[shoulder]",
            "type",
            "isometric",
            "position",
            "standing",
            "dose",
            "sets: 1, relax: 5 s",
            "ladder",
            "{ start: 2, steps: [ { n: 1, hold: 5 s, reps: 5, effort: 2..3 },"
                + " { n: 2, hold: 10 s, reps: 5, effort: 2..3 },"
                + " { n: 3, hold: 20 s, reps: 5, effort: 4..5 } ],"
                + " go_up_when: { all_reps_done_days: 3 }, who_decides: patient }"));
    SampleExercises.in(
        FILES,
        "wr-arm-stretch",
        Map.of("region", "[wrist]", "type", "stretch", "dose", dose("hold: 20 s, effort: 2..5")));
  }

  private static final Library LIBRARY = Library.read(FILES).library();
  private static final Poses POSES = Poses.of(LIBRARY);

  private static String dose(String rest) {
    return "sets: 2, reps: 8, rest: 30 s, " + rest;
  }

  private static Tailoring tailored(String entry, String... tags) {
    return Tailoring.of(LIBRARY, POSES, LIBRARY.entry(entry).orElseThrow(), Arrays.asList(tags));
  }

  private static StepTailoring first(Tailoring tailoring) {
    return tailoring.steps().get(0);
  }

  /** Walk-through 1: a man of 71 with a knee, step-ups on the right; no tag is marked. */
  @Test
  void stepUpsWithoutATag() {
    Tailoring stepUp = tailored("kn-step-up");
    assertFalse(stepUp.leftOut());
    assertTrue(
        first(stepUp)
            .statements()
            .containsAll(
                List.of("s-support", "s-fall", "s-fall-hurt", "s-talk", "s-give-way", "s-calf")));
    assertEquals(List.of(), first(stepUp).outcomes());
  }

  /** Had he been dizzy, or poor of sight, the step-ups would be left out, and could be taken. */
  @Test
  void steppingIsLeftOutForDizzinessAndPoorSight() {
    for (String tag : List.of("dizziness", "poor-sight")) {
      Tailoring stepUp = tailored("kn-step-up", tag);
      assertTrue(stepUp.leftOut(), tag);
      assertTrue(stepUp.mayOverride(), tag);
    }
    assertTrue(tailored("kn-step-up", "cannot-stand-alone").leftOut());
    assertFalse(tailored("kn-step-up", "cannot-stand-alone").mayOverride());
  }

  /** Walk-through 2: 26 weeks pregnant: the bridge is left out, the rock becomes sitting. */
  @Test
  void lyingFlatInPregnancy() {
    String tag = "pregnant-avoid-lying-flat";
    assertTrue(tailored("bk-bridge", tag).leftOut());
    assertTrue(tailored("bk-bridge", tag).mayOverride());
    Tailoring rock = tailored("bk-rock", tag);
    assertFalse(rock.leftOut());
    assertEquals("bk-rock-sitting", first(rock).swaps().get(0).to().value());
    assertEquals(List.of(), first(tailored("bk-rock-sitting", tag)).outcomes());
  }

  /** Walk-through 3: a latex allergy: bands are changed, what has no band stays as it is. */
  @Test
  void latexAllergy() {
    Tailoring row = tailored("sh-row-band", "latex-allergy");
    assertFalse(row.leftOut());
    assertTrue(
        first(row).swaps().stream().anyMatch(s -> s.to().value().equals("band-light-latex-free")));
    assertEquals(List.of(), first(tailored("wr-arm-stretch", "latex-allergy")).outcomes());
  }

  /** The table alone, for an entry that does not name the tag: the twin of the stock list. */
  @Test
  void theStockGivesTheTwinOfABand() {
    Library library =
        Library.read(
                ExampleLibrary.with(
                    List.of(
                        new Example.Edit(
                            ExampleFiles.BAND,
                            "  - { tag: latex-allergy, action: adapt, swap: { band-light:"
                                + " band-light-latex-free, band-medium: band-medium-latex-free }"
                                + " }\n",
                            ""))))
            .library();
    Tailoring row =
        Tailoring.of(
            library, POSES, library.entry("sh-row-band").orElseThrow(), List.of("latex-allergy"));
    assertEquals(
        List.of("band-light band-light-latex-free"),
        first(row).swaps().stream()
            .map(swap -> swap.from().value() + " " + swap.to().value())
            .toList());
  }

  /** Only the steps with a hand on the support remain, and someone stands by. */
  @Test
  void fallsLeaveOnlyStepsWithAHand() {
    Tailoring stand = tailored("ba-heel-toe-stand", "falls-last-year");
    assertEquals(List.of(1, 2), stand.stepsLeft());
    assertTrue(first(stand).statements().contains("s-helper"));
    assertFalse(first(tailored("ba-heel-toe-stand")).statements().contains("s-helper"));
  }

  /** The same tag asks for a helper, and nobody is there: now every step goes. */
  @Test
  void whoLivesAloneHasNoHelper() {
    assertEquals(List.of(1, 2, 3), tailored("ba-heel-toe-stand", "lives-alone").stepsLeft());
    assertTrue(tailored("ba-heel-toe-stand", "lives-alone", "falls-last-year").leftOut());
    assertTrue(tailored("ba-heel-toe-stand", "falls-last-year", "lives-alone").leftOut());
  }

  /** Hold 5 s at most and effort 4 at most; a stretch is not touched. */
  @Test
  void bloodPressureCapsHoldAndEffort() {
    Tailoring hold = tailored("sh-turnout-hold", "blood-pressure-not-controlled");
    StepTailoring third = hold.step(3).orElseThrow();
    assertEquals(Optional.of(Quantity.of(5, Unit.SECOND)), third.dose().amount(DoseField.HOLD));
    assertEquals(Optional.of(Range.of(4, 4)), third.dose().effort());
    assertEquals(Action.ADAPT, third.outcomes().get(0).action());
    assertEquals("tag-blood-pressure-not-controlled", third.outcomes().get(0).rule());
    assertTrue(third.outcomes().get(0).because().told().startsWith("hold 20 s (line "));
    assertEquals(
        List.of(), first(tailored("wr-arm-stretch", "blood-pressure-not-controlled")).outcomes());
  }

  /** A tag of a region acts on that region alone. */
  @Test
  void regionsAreToldApart() {
    assertTrue(tailored("sh-turnout-hold", "tendon-repair-shoulder").leftOut());
    assertFalse(tailored("sh-turnout-hold", "tendon-repair-shoulder").mayOverride());
    assertFalse(tailored("sh-turnout-hold", "tendon-repair-knee").leftOut());
    assertEquals(List.of(1, 2, 3), tailored("sh-turnout-hold", "joint-flare-hip").stepsLeft());
    assertEquals(
        List.of(1, 2),
        tailored("sh-turnout-hold", "joint-flare-shoulder").stepsLeft(),
        "only the third step reaches effort 4, and only the lowest step may");
  }

  @Test
  void shoesAndAHandForNumbFeet() {
    Tailoring stand = tailored("ba-heel-toe-stand", "numb-feet");
    assertEquals(List.of(1, 2), stand.stepsLeft());
    assertEquals(Optional.of(Feet.SHOES), first(stand).feet());
    assertTrue(first(stand).statements().contains("s-skin-feet"));
  }

  /** The entry knows more than the table, which would leave it out. */
  @Test
  void anEntryMaySayHowToAdaptWhereTheTableLetsIt() {
    Tailoring rise = tailored("hp-chair-rise", "hip-replacement-precautions");
    assertFalse(rise.leftOut());
    assertEquals(
        Optional.of(Quantity.of(55, Unit.CENTIMETRE)),
        first(rise).dose().amount(DoseField.SEAT_HEIGHT));
  }

  /** Said, not passed over. */
  @Test
  void aTagWithoutARuleIsSaidToHaveNone() {
    assertEquals(List.of("left-handed"), tailored("hp-chair-rise", "left-handed").unruled());
    assertEquals(
        List.of("recent-surgery-ear"), tailored("hp-chair-rise", "recent-surgery-ear").unruled());
    assertEquals(List.of(), tailored("hp-chair-rise", "memory-problem").unruled());
  }

  @Test
  void someTagsActOnThePack() {
    List<TagRule> rows =
        Tailoring.pack(LIBRARY, List.of("memory-problem", "fear-of-movement", "poor-sight"));
    assertEquals(Optional.of(2), rows.get(0).pack().entriesMax());
    assertTrue(rows.get(0).pack().therapistDecides());
    assertEquals("ad-how-much-pain", rows.get(1).pack().add().orElseThrow().value());
    assertEquals("large-print", rows.get(2).pack().layout().orElseThrow().value());
    assertEquals(List.of(), Tailoring.pack(LIBRARY, List.of("latex-allergy")));
  }

  /** Every tag of the table is in effect for some entry or for the pack. */
  @Test
  void theTableHasTwentyThreeTags() {
    assertEquals(23, LIBRARY.tagRules().stream().map(TagRule::rule).distinct().count());
    assertEquals(
        22, LIBRARY.requirements().stream().map(row -> row.rule().value()).distinct().count());
  }
}
