package goniograph.sheet;

import goniograph.body.Side;
import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.dose.DoseRows;
import goniograph.dose.Quantity;
import goniograph.dose.Timetable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The dose as words and counters, made from fields by the phrases of one language: nothing in it is
 * typed by hand.
 *
 * @param wording the language
 * @param act phrase id of what one does, empty for the plain one
 * @param meaning phrase id of what the side means
 * @param first the side that begins where both take turns: the one that is drawn
 */
record DoseWords(Wording wording, Optional<String> act, Optional<String> meaning, Side first) {
  private static final int MOST_ROWS = 4;

  /** The table of a dose. */
  DoseTable table(DoseRows rows, Dose dose) {
    List<DoseTable.Row> table = new ArrayList<>();
    Optional<Quantity> hold = rows.rows().stream().flatMap(r -> r.hold().stream()).findFirst();
    boolean holdHasRow = rows.rows().size() + 2 <= MOST_ROWS;
    if (hold.isPresent() && holdHasRow) {
      table.add(new DoseTable.Row(hold(hold.get()), List.of(bar(hold.get()))));
    }
    for (DoseRows.Row row : rows.rows()) {
      String before = hold.isPresent() && !holdHasRow && !row.again() ? hold(hold.get()) + " " : "";
      table.add(new DoseTable.Row(before + words(row), counters(row)));
    }
    table.add(last(rows.last(), dose.flag(DoseField.REST_DAY_BETWEEN)));
    return new DoseTable(wording.say("label.dose"), table);
  }

  /** For each day of a week the number of sessions, from the first day of the diary on. */
  static List<Integer> week(DoseRows.Last last) {
    return Timetable.spread(last.daysPerWeek()).stream()
        .map(session -> session ? last.perDay() : 0)
        .toList();
  }

  private String hold(Quantity hold) {
    return wording.sayFirst(phrases("hold"), Map.of("seconds", hold.inBase()));
  }

  private String words(DoseRows.Row row) {
    List<String> words = new ArrayList<>(List.of(act(row)));
    if (row.turn() == DoseRows.Turn.ALTERNATING) {
      words.add(wording.say("dose.in-turn"));
    }
    if (row.rings().isEmpty()) {
      words.add(wording.say("dose.count-to", Map.of("reps", row.reps())));
    }
    return String.join(" ", words);
  }

  private String act(DoseRows.Row row) {
    Map<String, ?> reps = Map.of("reps", row.reps());
    return switch (row.turn()) {
      case FIRST_SIDE -> side(first, row.reps());
      case SECOND_SIDE -> side(first.other(), row.reps());
      case ONLY, ALTERNATING ->
          row.hold().isPresent()
              ? wording.sayFirst(phrases("hold-times"), reps)
              : wording.sayFirst(phrases(row.again() ? "again" : "do"), reps);
    };
  }

  private String side(Side side, int reps) {
    String word = side.name().toLowerCase(Locale.ROOT);
    String name = wording.say("side-meaning." + meaning.orElse("working-side") + "." + word);
    return wording.say("dose.side", Map.of("side", name, "reps", reps));
  }

  private List<String> phrases(String kind) {
    return act.map(id -> List.of("act." + id + "." + kind, "dose." + kind))
        .orElse(List.of("dose." + kind));
  }

  private List<Counter> counters(DoseRows.Row row) {
    List<Counter> counters = new ArrayList<>();
    row.rings().ifPresent(n -> counters.add(rings(n)));
    row.rest().ifPresent(rest -> counters.add(clock(rest)));
    return counters;
  }

  private DoseTable.Row last(DoseRows.Last last, boolean dayBetween) {
    List<String> words = new ArrayList<>();
    if (last.rounds() > 1) {
      words.add(wording.say("dose.rounds", Map.of("sets", last.rounds())));
    }
    words.add(
        wording.say("dose.frequency", Map.of("perDay", last.perDay(), "days", last.daysPerWeek())));
    if (dayBetween) {
      words.add(wording.say("dose.day-between"));
    }
    List<Counter> counters = new ArrayList<>();
    last.rest().ifPresent(rest -> counters.add(clock(rest)));
    counters.add(strip(last));
    return new DoseTable.Row(String.join(" ", words), counters);
  }

  private Counter rings(int count) {
    return new Counter.Rings(count, wording.say("counter.rings", Map.of("n", count)));
  }

  private Counter clock(Quantity rest) {
    return new Counter.Clock(wording.say("dose.rest", Map.of("time", wording.amount(rest))));
  }

  private Counter bar(Quantity hold) {
    int seconds = hold.inBase().intValue();
    return new Counter.HoldBar(seconds, wording.say("counter.hold", Map.of("n", seconds)));
  }

  private Counter strip(DoseRows.Last last) {
    return new Counter.Week(
        week(last), wording.say("counter.week", Map.of("n", last.daysPerWeek())));
  }
}
