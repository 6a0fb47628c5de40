package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.check.Checker;
import goniograph.check.Example;
import goniograph.finding.Level;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** At a limit is inside and silent; a step beyond it is found. */
class LimitsTest {
  private static List<String> found(String file, String from, String to) {
    return new Checker(RuleBook.rules())
            .check(
                ExampleLibrary.checked(
                    ExampleLibrary.with(List.of(new Example.Edit(file, from, to)))))
            .stream()
            .filter(finding -> finding.level() != Level.NOTE)
            .map(finding -> finding.level().word() + " " + finding.rule())
            .toList();
  }

  /** The table of the example library: balance holds of 1 to 60 s, common practice. */
  @ParameterizedTest
  @CsvSource({"60 s, ''", "1 min, ''", "61 s, error dose-limit"})
  void hold(String hold, String expected) {
    assertEquals(
        expected.isEmpty() ? List.of() : List.of(expected),
        found(ExampleFiles.HEEL_TO_TOE, "{ n: 3, hold: 30 s", "{ n: 3, hold: " + hold));
  }

  /** A dose of 3 sessions with 8 h between them just fits into 16 waking hours. */
  @ParameterizedTest
  @CsvSource({"8 h, ''", "481 min, error waking-hours"})
  void gap(String gap, String expected) {
    assertEquals(
        expected.isEmpty() ? List.of() : List.of(expected),
        found(
            ExampleFiles.HEEL_TO_TOE,
            "{ per_day: 1, days_per_week: 7 }",
            "{ per_day: 3, days_per_week: 7, gap: " + gap + " }"));
  }

  /** 60 days before the review is the first day of the warning; today is 2026-11-25. */
  @ParameterizedTest
  @CsvSource({
    "2027-01-25, ''",
    "2027-01-24, warning review-due",
    "2026-11-25, warning review-due",
    "2026-01-01, warning review-due"
  })
  void review(String due, String expected) {
    assertEquals(
        expected.isEmpty() ? List.of() : List.of(expected),
        found(ExampleFiles.CHAIR_RISE, "review_due: 2027-05-31", "review_due: " + due));
  }

  /** 17 and 18 words are read easily, 19 are not. */
  @ParameterizedTest
  @CsvSource({"17, ''", "18, ''", "19, warning sentence-length"})
  void sentence(int words, String expected) {
    assertEquals(
        expected.isEmpty() ? List.of() : List.of(expected),
        found(
            ExampleFiles.CHAIR_RISE,
            "3. Lean forward until your nose is over your toes.",
            "3. Lean" + " on".repeat(words - 1) + "."));
  }
}
