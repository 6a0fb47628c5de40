package goniograph.dose;

import static goniograph.dose.Doses.dose;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.dose.DoseRows.Row;
import goniograph.dose.DoseRows.Turn;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class DoseRowsTest {
  private static final String DAILY = ", frequency.per_day: 1, frequency.days_per_week: 5";
  private static final Sides EACH = Sides.of(Sides.Mode.EACH_IN_TURN, Sides.Counting.PER_SIDE);
  private static final Sides ONE = Sides.of(Sides.Mode.BOTH_TOGETHER);

  @Test
  void oneRowASetWithItsRest() {
    DoseRows rows = rows("sets: 2, reps: 8, rest: 60 s", ONE);
    assertEquals(2, rows.rows().size());
    assertEquals(Optional.of(Quantity.of(60, Unit.SECOND)), rows.rows().get(0).rest());
    assertEquals(Optional.empty(), rows.rows().get(1).rest());
    assertEquals(List.of(false, true), rows.rows().stream().map(Row::again).toList());
    assertEquals(1, rows.last().rounds());
  }

  @Test
  void bothSidesOfOneSetRestBetweenThem() {
    DoseRows rows = rows("sets: 1, reps: 3, hold: 20 s, relax: 20 s, rest: 20 s", EACH);
    assertEquals(
        List.of(Turn.FIRST_SIDE, Turn.SECOND_SIDE), rows.rows().stream().map(Row::turn).toList());
    assertEquals(Optional.of(Quantity.of(20, Unit.SECOND)), rows.rows().get(0).hold());
    assertTrue(rows.rows().get(0).rest().isPresent());
    assertTrue(rows.rows().get(1).rest().isEmpty());
  }

  @Test
  void bothSidesOfSeveralSetsAreRounds() {
    DoseRows rows = rows("sets: 2, reps: 10, rest: 30 s", EACH);
    assertEquals(2, rows.rows().size());
    assertEquals(2, rows.last().rounds());
    assertEquals(Optional.of(Quantity.of(30, Unit.SECOND)), rows.last().rest());
  }

  @Test
  void overTwelveRepetitionsHaveNoRings() {
    assertEquals(OptionalInt.of(12), rows("sets: 1, reps: 12", ONE).rows().get(0).rings());
    assertEquals(OptionalInt.empty(), rows("sets: 1, reps: 15", ONE).rows().get(0).rings());
  }

  @Test
  void alternatingCountsBothSidesInOneRow() {
    Row row =
        rows("sets: 1, reps: 6", Sides.of(Sides.Mode.ALTERNATE, Sides.Counting.PER_SIDE))
            .rows()
            .get(0);
    assertEquals(Turn.ALTERNATING, row.turn());
    assertEquals(12, row.reps());
  }

  @Test
  void aTotalIsSharedBetweenTheSides() {
    List<Row> rows =
        rows("sets: 1, reps: 9", Sides.of(Sides.Mode.EACH_IN_TURN, Sides.Counting.TOTAL)).rows();
    assertEquals(List.of(5, 4), rows.stream().map(Row::reps).toList());
  }

  /** Whatever the dose, at most four rows, and the rows times the rounds are all repetitions. */
  @Test
  void neverOverFourRowsAndNeverARepetitionLost() {
    for (Sides sides : List.of(ONE, EACH)) {
      for (int sets = 1; sets <= 9; sets++) {
        DoseRows rows = rows("sets: %d, reps: 7".formatted(sets), sides);
        assertTrue(rows.rows().size() + 1 <= 4);
        int counted = rows.rows().stream().mapToInt(Row::reps).sum() * rows.last().rounds();
        assertEquals(sets * 7 * sides.timed(), counted);
      }
    }
  }

  private static DoseRows rows(String dose, Sides sides) {
    return DoseRows.of(dose(dose + DAILY), sides).orElseThrow();
  }
}
