package goniograph.dose;

import static goniograph.dose.Doses.dose;
import static goniograph.dose.Doses.tempo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepChangeTest {
  /** The tables of the demo clinic. */
  private static final StockTables STOCK =
      new StockTables(
          List.of(
              List.of("band-light", "band-light-latex-free"),
              List.of("band-medium", "band-medium-latex-free"),
              List.of("band-strong")),
          amounts(Measure.MASS, "0.5 kg", "1 kg", "1.5 kg", "2 kg", "3 kg", "4 kg"),
          amounts(Measure.LENGTH, "55 cm", "50 cm", "45 cm", "42 cm"),
          amounts(Measure.LENGTH, "10 cm", "15 cm", "20 cm"));

  private static List<Quantity> amounts(Measure measure, String... spelled) {
    return Arrays.stream(spelled).map(one -> measure.read(one).value().orElseThrow()).toList();
  }

  /**
   * The ladder of the band row: 120, 180, 216, 144 s under tension, at the last step a new band.
   */
  @Test
  void aNewBandRaisesTheLoadAlthoughTheRepetitionsDrop() {
    Dose third = tempo("2-1-3").over(dose("sets: 3, reps: 12, load.band: band-light"));
    Dose fourth = tempo("2-1-3").over(dose("sets: 3, reps: 8, load.band: band-medium"));
    StepChange change = between(third, fourth);
    assertEquals(Set.of(LoadVariable.BAND), change.raised());
    assertEquals(Set.of(LoadVariable.REPS), change.lowered());
    assertEquals(new BigDecimal("0.667"), change.tensionFactor().orElseThrow());
    assertTrue(change.raisesOne());
  }

  @Test
  void tensionMayDoubleButNoMore() {
    Dose five = dose("sets: 1, reps: 5, hold: 5 s");
    assertFalse(between(five, dose("sets: 1, reps: 5, hold: 10 s")).tensionMoreThanDoubles());
    assertTrue(between(five, dose("sets: 1, reps: 5, hold: 40 s")).tensionMoreThanDoubles());
    assertTrue(between(five, dose("sets: 1, reps: 5, hold: 10.001 s")).tensionMoreThanDoubles());
  }

  @Test
  void aStepThatOnlyDropsIsTold() {
    StepChange change = between(dose("sets: 3, reps: 10"), dose("sets: 2, reps: 8"));
    assertFalse(change.raisesOne());
    assertEquals(Set.of(LoadVariable.SETS, LoadVariable.REPS), change.lowered());
  }

  @Test
  void aLowerSeatAndAHigherStepAreHarder() {
    assertEquals(
        Set.of(LoadVariable.SEAT_HEIGHT, LoadVariable.STEP_HEIGHT),
        between(
                dose("seat_height: 45 cm, step_height: 10 cm"),
                dose("seat_height: 40 cm, step_height: 0.15 m"))
            .raised());
  }

  @Test
  void balanceWordsCount() {
    StepChange change =
        StepChange.between(
            new StepLoad(
                dose("sets: 1, reps: 3, hold: 30 s"),
                Map.of("support.need", "fingertip", "head_movement", "false"),
                Optional.empty()),
            new StepLoad(
                dose("sets: 1, reps: 3, hold: 20 s"),
                Map.of("support.need", "hover", "head_movement", "true"),
                Optional.empty()),
            STOCK);
    assertEquals(Set.of(LoadVariable.SUPPORT, LoadVariable.HEAD_MOVEMENT), change.raised());
    assertEquals(Set.of(LoadVariable.REP_TIME), change.lowered());
    assertEquals(List.of(LoadVariable.SUPPORT, LoadVariable.HEAD_MOVEMENT), change.raisedBalance());
  }

  @Test
  void aWiderRangeIsHarder() {
    Dose slide = dose("sets: 2, reps: 10");
    StepChange change =
        StepChange.between(
            new StepLoad(slide, Map.of(), Optional.of(BigDecimal.valueOf(90))),
            new StepLoad(slide, Map.of(), Optional.of(BigDecimal.valueOf(110))),
            STOCK);
    assertEquals(Set.of(LoadVariable.RANGE), change.raised());
  }

  /**
   * Ratamess 2009: loads rise by 2 to 10 %; the brief adds the next item of the clinic's table.
   * What stands behind the dash is the item named as the next.
   */
  @ParameterizedTest
  @CsvSource({
    "load.mass: 2 kg, load.mass: 2.2 kg, ''",
    "load.mass: 2 kg, load.mass: 3 kg, ''",
    "load.mass: 2 kg, load.mass: 3.5 kg, MASS - 3 kg",
    "load.mass: 500 g, load.mass: 1 kg, ''",
    "load.mass: 0.5 kg, load.mass: 1.5 kg, MASS - 1 kg",
    "load.mass: 4 kg, load.mass: 4.4 kg, ''",
    "load.mass: 4 kg, load.mass: 5 kg, MASS -",
    "sets: 2, load.mass: 4 kg, ''",
    "load.band: band-light, load.band: band-medium-latex-free, ''",
    "load.band: band-light, load.band: band-strong, BAND - band-medium",
    "load.legs: two-legs, load.legs: up-two-down-one, ''",
    "load.legs: two-legs, load.legs: one-leg, LEGS - up-two-down-one",
    "seat_height: 50 cm, seat_height: 45 cm, ''",
    "seat_height: 50 cm, seat_height: 42 cm, SEAT_HEIGHT - 45 cm",
    "seat_height: 45 cm, seat_height: 50 cm, ''",
    "step_height: 10 cm, step_height: 15 cm, ''",
    "step_height: 10 cm, step_height: 20 cm, STEP_HEIGHT - 15 cm",
    "load.force: 40 N, load.force: 44 N, ''",
    "load.force: 40 N, load.force: 45 N, FORCE -",
    "load.body_share: 50 %, load.body_share: 55 %, ''",
    "load.body_share: 50 %, load.body_share: 60 %, BODY_SHARE -"
  })
  void aLoadRisesByATenthOrToTheNextItem(String from, String to, String jump) {
    String found =
        between(dose(from), dose(to)).jumps().stream()
            .map(one -> (one.variable() + " - " + one.next().orElse("")).strip())
            .collect(Collectors.joining(", "));
    assertEquals(jump, found);
  }

  @Test
  void aFirstBandOrWeightIsHarderThanNone() {
    assertEquals(
        Set.of(LoadVariable.BAND),
        between(dose("reps: 8"), dose("load.band: band-light")).raised());
    assertEquals(
        Set.of(LoadVariable.MASS), between(dose("reps: 8"), dose("load.mass: 1 kg")).raised());
  }

  @Test
  void aStepLaysItsChangesOverTheDose() {
    Dose base = dose("sets: 1, relax: 5 s");
    Step step = new Step(2, dose("hold: 10 s, reps: 5"), Optional.empty(), Optional.empty());
    Ladder ladder =
        new Ladder(
            2,
            List.of(step),
            Optional.empty(),
            Criteria.NONE,
            Criteria.NONE,
            Criteria.NONE,
            Optional.of(Decider.PATIENT));
    assertEquals(
        dose("sets: 1, relax: 5 s, hold: 10 s, reps: 5"), ladder.doseAt(2, base).orElseThrow());
    assertTrue(ladder.doseAt(3, base).isEmpty());
    assertEquals(Optional.of(Decider.PATIENT), ladder.whoDecides(step));
    assertEquals(List.of(DoseField.SETS), base.shared(dose("sets: 2")));
  }

  private static StepChange between(Dose from, Dose to) {
    return StepChange.between(StepLoad.of(from), StepLoad.of(to), STOCK);
  }
}
