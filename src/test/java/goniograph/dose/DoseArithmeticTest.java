package goniograph.dose;

import static goniograph.dose.Doses.dose;
import static goniograph.dose.Doses.tempo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DoseArithmeticTest {
  private static final Sides ONE_SIDE = Sides.of(Sides.Mode.AFFECTED, Sides.Counting.PER_SIDE);
  private static final Sides EACH = Sides.of(Sides.Mode.EACH_IN_TURN, Sides.Counting.PER_SIDE);

  /** The 24 start doses of the demo library, with the minutes a day its table prints for each. */
  @ParameterizedTest
  @CsvSource({
    "sh-wall-slide,    1, 2,  8, 3-1-3,   0,  60, 1, 5, 2.9",
    "sh-turnout-hold,  1, 1,  5, 10,      5,   0, 2, 7, 2.3",
    "sh-row-band,      1, 2, 10, 2-1-3,   0,  90, 1, 3, 3.5",
    "sh-lean-swing,    1, 1, 30, 2,       0,   0, 3, 7, 3.0",
    "wr-slow-lower,    1, 3, 12, 1-0-4-1, 0,  60, 1, 5, 5.6",
    "ha-towel-squeeze, 1, 1, 10, 5,       5,   0, 2, 7, 3.2",
    "ha-finger-bends,  1, 1,  5, 15,      0,   0, 3, 7, 3.8",
    "wr-arm-stretch,   1, 1,  3, 20,     10,   0, 2, 7, 2.7",
    "bk-pelvic-rock,   1, 2, 10, 2-1-2,   0,  30, 2, 7, 4.3",
    "bk-bridge,        1, 2,  8, 2-3-2,   0,  60, 1, 5, 2.9",
    "bk-reach-kneel,   2, 1,  6, 5,       3,  60, 1, 5, 2.5",
    "bk-hip-hinge,     1, 2,  8, 2-1-3,   0,  60, 1, 7, 2.6",
    "hp-side-raise,    2, 2, 10, 2-1-2,   0,  30, 1, 3, 4.8",
    "hp-chair-rise,    1, 2,  8, 2-1-3,   0,  60, 1, 5, 2.6",
    "hp-front-stretch, 2, 1,  3, 30,      5,  20, 1, 5, 3.7",
    "kn-thigh-tighten, 1, 1, 10, 5,       5,   0, 3, 7, 4.8",
    "kn-step-up,       1, 2,  8, 2-1-2,   0,  60, 1, 3, 2.3",
    "kn-heel-slide,    1, 2, 10, 3-0-3,   0,  30, 3, 7, 7.5",
    "an-heel-raise,    1, 2, 10, 2-1-3,   0,  60, 1, 5, 3.0",
    "an-band-pull,     1, 3, 10, 2-1-2,   0,  60, 1, 3, 4.5",
    "an-knee-to-wall,  1, 2,  8, 2-3-1,   0,  30, 1, 7, 2.1",
    "ba-heel-toe-stand,2, 1,  3, 20,     20,  20, 1, 7, 3.7",
    "ba-one-leg-stand, 2, 1,  3, 10,     20,  20, 1, 7, 2.7",
    "ba-side-steps,    2, 2, 10, 2,       0,  60, 1, 7, 4.3"
  })
  void theDemoLibraryComesOutAtItsPrintedMinutes(
      String id,
      int sides,
      int sets,
      int reps,
      String rep,
      int relax,
      int rest,
      int perDay,
      int days,
      BigDecimal minutes) {
    Dose base =
        dose(
            ("sets: %d, reps: %d, relax: %d s, rest: %d s, frequency.per_day: %d,"
                    + " frequency.days_per_week: %d")
                .formatted(sets, reps, relax, rest, perDay, days));
    Dose work = rep.contains("-") ? tempo(rep) : dose("hold: " + rep + " s");
    Workload load =
        DoseArithmetic.workload(work.over(base), sides == 2 ? EACH : ONE_SIDE).orElseThrow();
    assertEquals(minutes, Workload.minutes(load.daySeconds()), id);
  }

  /** Worked by hand: 2 x 8 rises of 6 s with 60 s between, 5 days a week. */
  @Test
  void sessionDayAndWeekFollowOneFormula() {
    Dose rise =
        tempo("2-1-3")
            .over(
                dose(
                    "sets: 2, reps: 8, rest: 60 s, frequency.per_day: 1,"
                        + " frequency.days_per_week: 5"));
    Workload load = DoseArithmetic.workload(rise, Sides.of(Sides.Mode.MIDLINE)).orElseThrow();
    assertEquals(new BigDecimal("156"), load.sessionSeconds());
    assertEquals(new BigDecimal("96"), load.tensionSeconds());
    assertEquals(new BigDecimal("780"), load.weekSeconds());
    assertEquals(80, load.weekReps());
  }

  @Test
  void aDeclaredVolumeIsCompared() {
    Dose rise =
        tempo("2-1-3")
            .over(
                dose(
                    "sets: 2, reps: 8, rest: 60 s, frequency.per_day: 1, frequency.days_per_week: 5,"
                        + " volume.session: 2.5 min, volume.day: 4 min, volume.week_reps: 80"));
    Workload load = DoseArithmetic.workload(rise, ONE_SIDE).orElseThrow();
    assertEquals(
        List.of(
            new Workload.Declared(
                DoseField.VOLUME_DAY, new BigDecimal("240"), new BigDecimal("156"))),
        load.disagreeing(rise));
  }

  @Test
  void bothSidesCountOnlyWhereTheDoseIsPerSide() {
    assertEquals(2, EACH.timed());
    assertEquals(2, Sides.of(Sides.Mode.ALTERNATE, Sides.Counting.PER_SIDE).timed());
    assertEquals(1, Sides.of(Sides.Mode.ALTERNATE, Sides.Counting.TOTAL).timed());
    assertEquals(1, Sides.of(Sides.Mode.EACH_IN_TURN, Sides.Counting.TOTAL).timed());
    assertEquals(1, Sides.of(Sides.Mode.BOTH_TOGETHER).timed());
    assertEquals(1, Sides.of(Sides.Mode.LEFT, Sides.Counting.PER_SIDE).timed());
  }

  @Test
  void withoutItsPartsADoseComesToNothing() {
    assertTrue(DoseArithmetic.workload(dose("sets: 2, reps: 8"), ONE_SIDE).isEmpty());
    assertTrue(DoseArithmetic.workload(Dose.NONE, ONE_SIDE).isEmpty());
  }

  /** American College of Sports Medicine 2011: a stretch totals 60 s; 2 x 30, 4 x 15, 3 x 10. */
  @ParameterizedTest
  @CsvSource({"2, 30, 60", "4, 15, 60", "3, 10, 30"})
  void aStretchTotalsItsHolds(int reps, int hold, BigDecimal total) {
    Dose stretch = dose("sets: 1, reps: %d, hold: %d s".formatted(reps, hold));
    assertEquals(total, DoseArithmetic.tensionSeconds(stretch).orElseThrow());
  }

  /** The sums that the brief's two sample ladders print beside their steps. */
  @ParameterizedTest
  @CsvSource({
    "1, 5, 5, 25",
    "1, 5, 10, 50",
    "1, 5, 20, 100",
    "1, 4, 30, 120",
    "2, 10, 6, 120",
    "3, 10, 6, 180",
    "3, 12, 6, 216",
    "3, 8, 6, 144"
  })
  void timeUnderTensionOfTheSampleLadders(int sets, int reps, int rep, BigDecimal tension) {
    Dose step = dose("sets: %d, reps: %d, hold: %d s".formatted(sets, reps, rep));
    assertEquals(tension, DoseArithmetic.tensionSeconds(step).orElseThrow());
  }

  /** Holds of 2 min ten times are 20 min, not 20 s. */
  @Test
  void minutesAreNotSeconds() {
    Dose hold = dose("sets: 1, reps: 10, hold: 2 min");
    assertEquals(
        new BigDecimal("20.0"),
        Workload.minutes(DoseArithmetic.tensionSeconds(hold).orElseThrow()));
  }

  @ParameterizedTest
  @CsvSource({"110, 100, true", "90, 100, true", "110.1, 100, false", "89.9, 100, false"})
  void declaredAgreesWithinATenth(BigDecimal declared, BigDecimal computed, boolean agrees) {
    assertEquals(agrees, DoseArithmetic.agree(declared, computed));
  }

  @ParameterizedTest
  @CsvSource({"3, 8, true", "3, 9, false", "1, 24, true", "6, 3, true", "6, 4, false"})
  void sessionsFitIntoSixteenWakingHours(int perDay, int gap, boolean fits) {
    assertEquals(fits, DoseArithmetic.fitsWakingHours(perDay, Quantity.of(gap, Unit.HOUR)));
  }

  @ParameterizedTest
  @CsvSource({"2, 960 min", "3, 480 min", "4, 320 min", "6, 192 min"})
  void theLongestGapJustFits(int perDay, String gap) {
    assertEquals(gap, DoseArithmetic.longestGap(perDay).toString());
    assertTrue(DoseArithmetic.fitsWakingHours(perDay, DoseArithmetic.longestGap(perDay)));
  }

  /** 3 a week for 6 weeks are 18 sessions; 3 a day, 7 days a week are 21. */
  @Test
  void sessionsOfAWeek() {
    Dose drill =
        dose("sets: 1, reps: 1, hold: 1 s, frequency.per_day: 3, frequency.days_per_week: 7");
    assertEquals(21, DoseArithmetic.workload(drill, ONE_SIDE).orElseThrow().weekSessions());
  }
}
