package goniograph.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * The dose as rows of counters, numbers only: one row a set with its rest in the same row; both
 * sides with several sets one row a side and the rounds in the last row; never over four rows.
 *
 * @param rows the rows that are counted
 * @param last the last row: rounds, and how often
 */
public record DoseRows(List<Row> rows, Last last) {
  private static final int MOST_COUNTED = 3;
  private static final int MOST_RINGS = 12;

  public DoseRows {
    rows = List.copyOf(rows);
  }

  /** Whose turn a row is. */
  public enum Turn {
    /** The one side asked for, both together, or the middle. */
    ONLY,
    /** The side that begins. */
    FIRST_SIDE,
    /** The other side. */
    SECOND_SIDE,
    /** Left, then right, then left: the row counts both. */
    ALTERNATING
  }

  /**
   * One row.
   *
   * @param turn whose turn
   * @param again whether the same turn had a row before: "8 more times"
   * @param reps repetitions in this row
   * @param hold time of one repetition's hold, drawn as one bar before the rings
   * @param relax time between repetitions
   * @param rest time to rest after this row
   */
  public record Row(
      Turn turn,
      boolean again,
      int reps,
      Optional<Quantity> hold,
      Optional<Quantity> relax,
      Optional<Quantity> rest) {

    /** Rings to draw, one a repetition; none if there are over 12, then a sentence says it. */
    public OptionalInt rings() {
      return reps <= MOST_RINGS ? OptionalInt.of(reps) : OptionalInt.empty();
    }
  }

  /**
   * The last row.
   *
   * @param rounds how often all rows are gone through; 1 where each set has its row
   * @param rest time to rest between rounds
   * @param perDay sessions a day
   * @param daysPerWeek days a week
   */
  public record Last(int rounds, Optional<Quantity> rest, int perDay, int daysPerWeek) {}

  /** The rows of a dose; nothing if sets, reps or frequency are missing. */
  public static Optional<DoseRows> of(Dose dose, Sides sides) {
    if (dose.sets().isEmpty()
        || dose.reps().isEmpty()
        || dose.perDay().isEmpty()
        || dose.daysPerWeek().isEmpty()) {
      return Optional.empty();
    }
    int sets = dose.sets().getAsInt();
    boolean eachSide = sides.mode() == Sides.Mode.EACH_IN_TURN;
    boolean rounds = sets > 1 && (eachSide || sets > MOST_COUNTED);
    int rowed = rounds ? 1 : sets;
    List<Row> rows = eachSide ? sideRows(dose, sides) : setRows(dose, sides, rowed);
    Optional<Quantity> rest = rounds ? dose.rest() : Optional.empty();
    return Optional.of(
        new DoseRows(
            rows,
            new Last(
                rounds ? sets : 1, rest, dose.perDay().getAsInt(), dose.daysPerWeek().getAsInt())));
  }

  private static List<Row> setRows(Dose dose, Sides sides, int sets) {
    boolean alternating = sides.mode() == Sides.Mode.ALTERNATE;
    int reps = dose.reps().orElseThrow() * sides.timed();
    return IntStream.range(0, sets)
        .mapToObj(
            set ->
                row(
                    dose,
                    alternating ? Turn.ALTERNATING : Turn.ONLY,
                    set > 0,
                    reps,
                    set < sets - 1))
        .toList();
  }

  private static List<Row> sideRows(Dose dose, Sides sides) {
    int reps = dose.reps().orElseThrow();
    int second = sides.timed() == 2 ? reps : reps / 2;
    int first = sides.timed() == 2 ? reps : reps - second;
    List<Row> rows = new ArrayList<>();
    rows.add(row(dose, Turn.FIRST_SIDE, false, first, true));
    rows.add(row(dose, Turn.SECOND_SIDE, false, second, false));
    return rows;
  }

  private static Row row(Dose dose, Turn turn, boolean again, int reps, boolean restAfter) {
    Optional<Quantity> rest = restAfter ? dose.rest() : Optional.empty();
    Optional<Quantity> relax = reps > 1 ? dose.relax() : Optional.empty();
    return new Row(turn, again, reps, dose.hold(), relax, rest);
  }
}
