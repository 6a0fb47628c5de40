package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.check.Checked;
import goniograph.check.Rule;
import goniograph.dose.Workload;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.Exercise;
import goniograph.library.PlannedPhase;
import goniograph.library.PlannedPhase.Turn;
import goniograph.library.ProgrammePlan;
import goniograph.source.MemoryFiles;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The demo library's dose table, read from entries: its minutes come out, sound ladders and
 * programmes are silent, and slips of the pen are found. Source of the minutes: the dose table of
 * the demo library.
 */
class StarterLibraryTest {
  private static final List<Rule> RULES =
      RuleBook.rules().stream()
          .filter(
              rule ->
                  rule.page()
                      .name()
                      .matches(
                          "dose-.*|hold-or-tempo|waking-hours|rest-day|ladder-.*|band-.*"
                              + "|height-not-in-stock|programme-.*"))
          .toList();

  private static final Checked CHECKED = StarterLibrary.checked(StarterLibrary.files());

  private static List<Finding> found(Checked checked) {
    List<Finding> all = new ArrayList<>(checked.read().findings());
    RULES.forEach(rule -> rule.check(checked).forEach(all::add));
    return all.stream()
        .filter(finding -> !finding.rule().startsWith("section-"))
        .filter(finding -> !finding.rule().equals("library-file-missing"))
        .toList();
  }

  private static List<String> words(List<Finding> findings) {
    return findings.stream()
        .map(f -> f.rule() + " " + f.at().file() + ":" + f.at().line() + " " + f.what())
        .toList();
  }

  @Test
  void soundDosesLaddersAndProgrammesAreSilent() {
    assertEquals(24, CHECKED.library().exercises().size());
    assertEquals(List.of(), words(found(CHECKED)));
  }

  @ParameterizedTest
  @CsvSource({
    "sh-wall-slide, 2.9", "sh-turnout-hold, 2.3", "sh-row-band, 3.5", "sh-lean-swing, 3.0",
    "wr-slow-lower, 5.6", "ha-towel-squeeze, 3.2", "ha-finger-bends, 3.8", "wr-arm-stretch, 2.7",
    "bk-pelvic-rock, 4.3", "bk-bridge, 2.9", "bk-reach-kneel, 2.5", "bk-hip-hinge, 2.6",
    "hp-side-raise, 4.8", "hp-chair-rise, 2.6", "hp-front-stretch, 3.7", "kn-thigh-tighten, 4.8",
    "kn-step-up, 2.3", "kn-heel-slide, 7.5", "an-heel-raise, 3.0", "an-band-pull, 4.5",
    "an-knee-to-wall, 2.1", "ba-heel-toe-stand, 3.7", "ba-one-leg-stand, 2.7", "ba-side-steps, 4.3"
  })
  void startDosesTakeTheMinutesOfTheTable(String id, BigDecimal minutes) {
    Exercise exercise = CHECKED.library().exercise(id).orElseThrow();
    Turn turn = new Turn(exercise, exercise.start(), exercise.common().id().at());
    assertEquals(minutes, Workload.minutes(turn.daySeconds()));
  }

  /** The fullest day of each phase, as the table of programmes prints it. */
  @ParameterizedTest
  @CsvSource({
    "pr-knee-stairs, 1, 12.3",
    "pr-knee-stairs, 2, 17.2",
    "pr-steady, 1, 13.6",
    "pr-steady, 2, 12.6",
    "pr-packing-arm, 1, 13.8",
    "pr-back-restart, 1, 9.8",
    "pr-back-restart, 2, 12.3"
  })
  void programmesTakeTheMinutesOfTheTable(String id, int phase, BigDecimal minutes) {
    assertEquals(minutes, plan(id).phases().get(phase - 1).fullestMinutes());
  }

  private static ProgrammePlan plan(String id) {
    return CHECKED.library().programmes().stream()
        .filter(programme -> programme.id().equals(id))
        .map(programme -> ProgrammePlan.of(programme, CHECKED.library()))
        .findFirst()
        .orElseThrow();
  }

  /** One leg takes the place of heel to toe, in the order of the sheet too. */
  @Test
  void aReplacementTakesThePlaceOfTheOther() {
    assertEquals(
        List.of("hp-chair-rise", "an-heel-raise", "ba-one-leg-stand", "ba-side-steps"),
        plan("pr-steady").phases().get(1).turns().stream().map(t -> t.exercise().id()).toList());
    assertEquals(1, plan("pr-knee-stairs").phases().get(1).topics().size());
  }

  /** The diary of a 5-day and of a 3-day exercise: oo.oo.o and o.o..o. from the first day on. */
  @Test
  void theTimetableIsTheOneOfTheDiaries() {
    PlannedPhase phase = plan("pr-knee-stairs").phases().get(1);
    List<String> daily = List.of("kn-thigh-tighten", "kn-heel-slide");
    assertEquals(with(daily, "hp-chair-rise", "kn-step-up"), on(phase, DayOfWeek.SUNDAY));
    assertEquals(with(daily, "hp-chair-rise"), on(phase, DayOfWeek.MONDAY));
    assertEquals(with(daily, "kn-step-up"), on(phase, DayOfWeek.TUESDAY));
    assertEquals(with(daily, "hp-chair-rise"), on(phase, DayOfWeek.WEDNESDAY));
    assertEquals(7, phase.week(DayOfWeek.SUNDAY).size());
  }

  private static List<String> on(PlannedPhase phase, DayOfWeek day) {
    return phase.on(day, DayOfWeek.SUNDAY).stream().map(turn -> turn.exercise().id()).toList();
  }

  private static List<String> with(List<String> daily, String... more) {
    return Stream.concat(daily.stream(), Stream.of(more)).toList();
  }

  private static final Pattern NUMBER =
      Pattern.compile(
          "\\b(hold|reps|sets|load\\.mass|per_day|seat_height|step_height|rest): ([0-9.]+)");

  /**
   * Every hold, count, load and height of every entry is multiplied by 10, one at a time. Each is
   * found in the file that was changed; what is not stands here by name and stays inside every
   * limit.
   */
  @Test
  void aNumberTenTimesTooLargeIsFound() {
    List<String> missed = new ArrayList<>();
    int tried = 0;
    for (Exercise exercise : CHECKED.library().exercises()) {
      String text = exercise.common().file().text();
      for (MatchResult number : NUMBER.matcher(text).results().toList()) {
        tried++;
        if (found(StarterLibrary.checked(tenfold(exercise.id(), text, number))).stream()
            .noneMatch(one -> one.level() == Level.ERROR && one.entry().equals(exercise.id()))) {
          missed.add(exercise.id() + " " + number.group());
        }
      }
    }
    assertTrue(tried > 150, tried + " tried");
    assertEquals(List.of(), missed);
  }

  private static MemoryFiles tenfold(String id, String text, MatchResult number) {
    String more = new BigDecimal(number.group(2)).multiply(BigDecimal.TEN).toPlainString();
    String changed = text.substring(0, number.start(2)) + more + text.substring(number.end(2));
    return StarterLibrary.tables().with(StarterLibrary.path(id), changed.replace(".0 ", " "));
  }
}
