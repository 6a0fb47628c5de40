package goniograph.dose;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.THURSDAY;
import static java.time.DayOfWeek.TUESDAY;
import static java.time.DayOfWeek.WEDNESDAY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimetableTest {

  /** The 5-day strip is the one of the sheet design; the others are the even spread by hand. */
  @ParameterizedTest
  @CsvSource({"1, o......", "2, o...o..", "3, o.o..o.", "5, oo.oo.o", "6, ooo.ooo", "7, ooooooo"})
  void sessionDaysAreSpreadEvenly(int days, String strip) {
    String spread =
        Timetable.spread(days).stream()
            .map(session -> session ? "o" : ".")
            .collect(Collectors.joining());
    assertEquals(strip, spread);
  }

  @Test
  void everySpreadHasItsDays() {
    for (int days = 1; days <= 7; days++) {
      assertEquals(days, Timetable.spread(days).stream().filter(session -> session).count());
    }
  }

  /** ACSM 2011: 48 hours between sessions of one muscle group, counted in days round the week. */
  @Test
  void twoDaysLieBetweenRestedSessions() {
    assertEquals(2, Timetable.leastGap(Set.of(MONDAY, WEDNESDAY, FRIDAY)));
    assertEquals(1, Timetable.leastGap(Set.of(MONDAY, TUESDAY, FRIDAY)));
    assertEquals(1, Timetable.leastGap(Set.of(MONDAY, TUESDAY, THURSDAY)));
    assertEquals(7, Timetable.leastGap(Set.of(MONDAY)));
  }

  @Test
  void threeDaysAWeekAreTheMostThatLeave48Hours() {
    assertEquals(3, Timetable.mostDays(2));
  }

  /** Counted by hand: Monday, Wednesday, Friday moved round the week; two days 2 or more apart. */
  @ParameterizedTest
  @CsvSource({"1, 2, 7", "2, 2, 14", "3, 2, 7", "4, 2, 0", "2, 3, 7", "2, 4, 0", "7, 1, 1"})
  void whichWeeksThereAre(int days, int gap, int patterns) {
    assertEquals(patterns, Timetable.patterns(days, gap).size());
  }

  @Test
  void mondayWednesdayFridayIsOneOfThem() {
    assertTrue(Timetable.patterns(3, 2).contains(Set.of(MONDAY, WEDNESDAY, FRIDAY)));
    assertFalse(Timetable.patterns(3, 2).contains(Set.of(MONDAY, TUESDAY, FRIDAY)));
  }
}
