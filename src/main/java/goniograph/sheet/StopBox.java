package goniograph.sheet;

import java.util.List;

/**
 * The stop-and-call box: approved statements only, gravest level first.
 *
 * @param heading for instance "Stop and call"
 * @param rows one a level that has statements
 */
public record StopBox(String heading, List<Row> rows) {
  public StopBox {
    rows = List.copyOf(rows);
  }

  /**
   * One level.
   *
   * @param rank 3 call the emergency number, 2 stop and call us, 1 ease off
   * @param label the level in words
   * @param statements its statements, in the fixed order
   */
  public record Row(int rank, String label, List<String> statements) {
    public Row {
      statements = List.copyOf(statements);
    }
  }
}
