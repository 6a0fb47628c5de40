package goniograph.sheet;

import java.util.List;

/**
 * The dose as a table, one act a row: words at the start, the thing to count at the end.
 *
 * @param label the block's name, for instance "Do it"
 * @param rows at most four
 */
public record DoseTable(String label, List<Row> rows) {
  public DoseTable {
    rows = List.copyOf(rows);
  }

  /**
   * One act.
   *
   * @param words for instance "Stand up 8 times. Rest 1 minute."
   * @param counters what a finger runs along, in order
   */
  public record Row(String words, List<Counter> counters) {
    public Row {
      counters = List.copyOf(counters);
    }
  }
}
