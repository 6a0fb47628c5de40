package goniograph.dose;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which days of a week. */
public final class Timetable {
  private static final int WEEK = 7;

  private Timetable() {}

  /**
   * The session days of a week, spread as evenly as whole days allow, from the first day of the
   * diary on: {@code true} is a session day.
   *
   * @param days 1 to 7
   */
  public static List<Boolean> spread(int days) {
    Set<Integer> sessions =
        IntStream.range(0, days)
            .mapToObj(k -> (2 * WEEK * k + days) / (2 * days))
            .collect(Collectors.toSet());
    return IntStream.range(0, WEEK).mapToObj(sessions::contains).toList();
  }

  /** The same as weekdays, for a week that begins on this day. */
  public static Set<DayOfWeek> spread(int days, DayOfWeek first) {
    List<Boolean> sessions = spread(days);
    return IntStream.range(0, WEEK)
        .filter(sessions::get)
        .mapToObj(first::plus)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(DayOfWeek.class)));
  }

  /** The least number of days from one session day to the next, round the week; 7 for one day. */
  public static int leastGap(Set<DayOfWeek> sessions) {
    List<DayOfWeek> ordered = List.copyOf(EnumSet.copyOf(sessions));
    return IntStream.range(0, ordered.size())
        .map(i -> gap(ordered.get(i), ordered.get((i + 1) % ordered.size())))
        .min()
        .orElse(WEEK);
  }

  /**
   * Every set of so many weekdays that leaves so many days from one to the next, round the week:
   * Monday, Wednesday and Friday are one of the 7 sets of 3 days with 2 days from one to the next.
   *
   * @param days 1 to 7
   */
  public static List<Set<DayOfWeek>> patterns(int days, int leastGap) {
    return allDays(leastGap).filter(set -> set.size() == days).toList();
  }

  /**
   * The most session days a week that leave so many days from one to the next, found by trying
   * every set of weekdays.
   */
  public static int mostDays(int leastGap) {
    return allDays(leastGap).mapToInt(Set::size).max().orElse(0);
  }

  private static Stream<Set<DayOfWeek>> allDays(int leastGap) {
    return IntStream.range(1, 1 << WEEK)
        .mapToObj(Timetable::days)
        .filter(days -> leastGap(days) >= leastGap);
  }

  private static int gap(DayOfWeek from, DayOfWeek to) {
    int days = Math.floorMod(to.getValue() - from.getValue(), WEEK);
    return days == 0 ? WEEK : days;
  }

  private static Set<DayOfWeek> days(int bits) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if ((bits >> (day.getValue() - 1)) % 2 != 0) {
        days.add(day);
      }
    }
    return Collections.unmodifiableSet(days);
  }
}
