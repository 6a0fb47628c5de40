package goniograph.dose;

import static goniograph.dose.Doses.dose;
import static goniograph.dose.Doses.tempo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StepChangeTest {
  private static final List<String> BANDS = List.of("band-light", "band-medium");

  /**
   * The ladder of the band row: 120, 180, 216, 144 s under tension, at the last step a new band.
   */
  @Test
  void aNewBandRaisesTheLoadAlthoughTheRepetitionsDrop() {
    Dose third = tempo("2-1-3").over(dose("sets: 3, reps: 12, load.band: band-light"));
    Dose fourth = tempo("2-1-3").over(dose("sets: 3, reps: 8, load.band: band-medium"));
    StepChange change = StepChange.between(third, Map.of(), fourth, Map.of(), BANDS);
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
    assertTrue(change.dropsAll());
    assertFalse(change.raisesOne());
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
    Dose stand = dose("sets: 1, reps: 3, hold: 30 s");
    StepChange change =
        StepChange.between(
            stand,
            Map.of("support.need", "fingertip", "head_movement", "false"),
            dose("sets: 1, reps: 3, hold: 20 s"),
            Map.of("support.need", "hover", "head_movement", "true"),
            BANDS);
    assertEquals(Set.of(LoadVariable.SUPPORT, LoadVariable.HEAD_MOVEMENT), change.raised());
    assertEquals(Set.of(LoadVariable.REP_TIME), change.lowered());
  }

  @Test
  void aStepLaysItsChangesOverTheDose() {
    Dose base = dose("sets: 1, relax: 5 s");
    Step step =
        new Step(2, dose("hold: 10 s, reps: 5"), Map.of(), Optional.empty(), Optional.empty());
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
    return StepChange.between(from, Map.of(), to, Map.of(), BANDS);
  }
}
