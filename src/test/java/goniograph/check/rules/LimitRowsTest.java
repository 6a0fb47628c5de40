package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.dose.DoseField;
import goniograph.dose.Quantity;
import goniograph.dose.Unit;
import goniograph.finding.Level;
import goniograph.library.DoseLimit;
import goniograph.library.DoseLimit.Scope;
import goniograph.library.Exercise;
import goniograph.library.Precaution.Within;
import goniograph.library.Vocabulary.AgeGroup;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Spellings;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every row of the demo's table of limits: silent at its ends, found one small step beyond. */
class LimitRowsTest {
  private static final List<DoseLimit> ROWS =
      StarterLibrary.checked(StarterLibrary.tables()).library().limits();

  /** A row, a value at an end of its limit or its edge or one step beyond, and whether it is. */
  private record Case(DoseLimit row, String value, Level level, boolean beyond) {
    String name() {
      return LimitWords.scope(row.scope()) + " " + row.field().value() + " " + value;
    }
  }

  @TestFactory
  Stream<DynamicTest> everyRowHasItsEnds() {
    return ROWS.stream()
        .filter(row -> DoseField.ofKey(row.field().value()).isPresent() && !row.asksFor())
        .flatMap(row -> cases(row).stream())
        .map(one -> DynamicTest.dynamicTest(one.name(), () -> check(one)));
  }

  private static List<Case> cases(DoseLimit row) {
    List<Case> cases = new ArrayList<>(cases(row, row.limit().value(), Level.ERROR));
    row.warn().ifPresent(edge -> cases.addAll(cases(row, edge.value(), Level.WARNING)));
    return cases;
  }

  private static List<Case> cases(DoseLimit row, Within within, Level level) {
    List<Case> cases = new ArrayList<>();
    BigDecimal least = within instanceof Within.Amounts ? new BigDecimal("0.1") : BigDecimal.ONE;
    Bounds bounds = Bounds.of(within);
    bounds.low().ifPresent(end -> ends(cases, row, end, least.negate(), level));
    bounds.high().ifPresent(end -> ends(cases, row, end, least, level));
    return cases;
  }

  private static void ends(
      List<Case> cases, DoseLimit row, Bounds.End end, BigDecimal step, Level level) {
    cases.add(new Case(row, spelled(row, end.number()), level, false));
    BigDecimal beyond = end.number().add(step);
    boolean sameEnd =
        level == Level.WARNING && Bounds.of(row.limit().value()).passed(beyond).isPresent();
    if (!sameEnd && readable(row, beyond)) {
      cases.add(new Case(row, spelled(row, beyond), level, true));
    }
  }

  /** In base units, which every field takes: weeks in days, hours in minutes. */
  private static String spelled(DoseLimit row, BigDecimal number) {
    DoseField field = DoseField.ofKey(row.field().value()).orElseThrow();
    String digits = number.stripTrailingZeros().toPlainString();
    return switch (field) {
      case HOLD, RELAX, REST -> digits + " s";
      case DURATION ->
          new Quantity(number, Unit.SECOND).in(Unit.DAY).map(Quantity::toString).orElse("183 d");
      case LOAD_MASS -> digits + " kg";
      case LOAD_FORCE -> digits + " N";
      case SEAT_HEIGHT, STEP_HEIGHT -> digits + " cm";
      default -> digits;
    };
  }

  /** Some ends are those of the field itself, beyond which nothing can be written. */
  private static boolean readable(DoseLimit row, BigDecimal number) {
    DoseField field = DoseField.ofKey(row.field().value()).orElseThrow();
    return field.type().read(spelled(row, number)).value().isPresent();
  }

  private static void check(Case one) {
    Exercise exercise = exercise(one.row(), one.value());
    assertTrue(one.row().covers(exercise, exercise.start()), "the row covers the exercise");
    boolean found =
        Breach.all(List.of(one.row()), exercise, exercise.start()).stream()
            .anyMatch(breach -> breach.level() == one.level());
    assertEquals(one.beyond(), found);
  }

  /** An exercise that the row covers, with this value in the field that it limits. */
  private static Exercise exercise(DoseLimit row, String value) {
    Scope scope = row.scope();
    String type = Spellings.word(scope.types().isEmpty() ? Type.DYNAMIC : scope.types().get(0));
    String region = scope.regions().isEmpty() ? "hip" : Spellings.word(scope.regions().get(0));
    String aim = scope.aim().map(Spellings::word).orElse("mobility");
    String field = row.field().value();
    String effort =
        field.equals("effort") ? "" : "  effort: " + scope.fromEffort().orElse(3) + "\n";
    return entry(
        "region: [" + region + "]\naim: " + aim + "\ntype: " + type + "\n" + audience(scope),
        effort + "  " + field + ": " + value + "\n");
  }

  private static String audience(Scope scope) {
    return scope
        .audience()
        .map(
            whom ->
                whom.group() == AgeGroup.CHILD
                    ? "audience: { child: "
                        + whom.ages().flatMap(ages -> ages.high()).orElse(9)
                        + " }\n"
                    : "audience: " + Spellings.word(whom.group()) + "\n")
        .orElse("");
  }

  static Exercise entry(String fields, String dose) {
    String text =
        """
        ---
        schema: entry/1
        id: hp-try
        kind: exercise
        position: standing
        sides: { mode: midline }
        figure: hp-try
        %sdose:
        %sreview_due: 2027-05-31
        ---
        # Try
        """
            .formatted(fields, dose);
    var checked =
        StarterLibrary.checked(StarterLibrary.tables().with(StarterLibrary.path("hp-try"), text));
    return checked.library().exercise("hp-try").orElseThrow(() -> new AssertionError(text));
  }

  /** What breaches which row, by the words of the finding. */
  private static List<String> found(String fields, String dose) {
    Exercise exercise = entry(fields, dose);
    return Breach.all(ROWS, exercise, exercise.start()).stream()
        .map(breach -> breach.level().word() + ": " + LimitWords.what(breach))
        .toList();
  }

  private static final String STRETCH = "region: [hip]\naim: mobility\ntype: stretch\n";

  private static String stretch(int reps, int hold) {
    return "  sets: 1\n  reps: %d\n  hold: %d s\n  effort: 2\n".formatted(reps, hold);
  }

  /** American College of Sports Medicine 2011: 60 s in all, however they are shared out. */
  @ParameterizedTest
  @CsvSource({"2, 30", "4, 15", "3, 20", "1, 60"})
  void aStretchOfAMinuteIsSilent(int reps, int hold) {
    assertEquals(List.of(), found(STRETCH, stretch(reps, hold)));
  }

  @Test
  void aShorterStretchAsksForASecondLook() {
    assertEquals(
        List.of(
            "warning: The time under tension in a session is 45 s; for stretch at least `60 s` is"
                + " usual."),
        found(STRETCH, stretch(3, 15)));
  }

  /** The same: older people hold 30 to 60 s. A row for them stands beside the one for all. */
  @Test
  void olderPeopleHoldLonger() {
    assertEquals(
        List.of("warning: `hold` is 20 s; for stretch, for older people at least `30 s` is usual."),
        found(STRETCH + "audience: older\n", stretch(3, 20)));
    assertEquals(List.of(), found(STRETCH, stretch(3, 20)));
  }

  /** Common practice: a child of 9 lifts 1 kg, one of 12 lifts 2 kg. */
  @ParameterizedTest
  @CsvSource({"9, 1 kg, 0", "9, 1.5 kg, 1", "12, 1.5 kg, 0", "12, 2.5 kg, 1"})
  void aChildsLoadGoesByAge(int age, String mass, int breaches) {
    String entry =
        "region: [hip]\naim: function\ntype: dynamic\naudience: { child: " + age + " }\n";
    assertEquals(breaches, found(entry, "  load.mass: " + mass + "\n  effort: 3\n").size());
  }

  /** ACSM 2011: 48 hours between hard sessions; three a day of a strength drill are 21 a week. */
  @Test
  void hardStrengthWorkThreeTimesADayIsTooMuch() {
    assertEquals(
        List.of(
            "error: `frequency.days_per_week` is 7; for strength, from effort 5 at most `3` is"
                + " allowed.",
            "error: `frequency.per_day` is 3; for strength, from effort 5 at most `1` is allowed."),
        found(
            "region: [hip]\naim: strength\ntype: dynamic\n",
            "  frequency: { per_day: 3, days_per_week: 7, rest_day_between: true }\n"
                + "  effort: 4..5\n"));
  }

  /** Ten holds of 2 min are 20 min of holding: the hold is said, and the time not again. */
  @Test
  void aTimeIsNotSaidTwice() {
    assertEquals(
        List.of("error: `hold` is 2 min; for isometric at most `60 s` is allowed."),
        found(
            "region: [hip]\naim: strength\ntype: isometric\n",
            "  sets: 1\n  reps: 10\n  hold: 2 min\n  relax: 5 s\n  effort: 4\n"
                + "  frequency: { per_day: 1, days_per_week: 5 }\n"));
  }
}
