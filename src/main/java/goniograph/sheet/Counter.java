package goniograph.sheet;

import java.util.List;

/** Something to count by, drawn. Every counter carries its meaning in words. */
public sealed interface Counter {
  /** The counter in words, for those who hear the page. */
  String words();

  /** A ring for each time, 1 to 12. */
  record Rings(int count, String words) implements Counter {}

  /** A rest: the clock with its words beside it. */
  record Clock(String words) implements Counter {}

  /** A bar with one tick for each second of a hold. */
  record HoldBar(int seconds, String words) implements Counter {}

  /** A week: for each day the number of sessions, 0 for a day of rest. */
  record Week(List<Integer> sessions, String words) implements Counter {
    public Week {
      sessions = List.copyOf(sessions);
    }
  }
}
