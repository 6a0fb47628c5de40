package goniograph.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.check.Checker;
import goniograph.check.Example;
import goniograph.check.Rule;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.source.DiskFiles;
import goniograph.source.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What rules about text speak about and what not, sentence by sentence. The sentences are our own
 * and stand in two files; common practice, no source.
 */
class TextSenseTest {
  private static final Files SENTENCES =
      DiskFiles.at(Path.of("src/test/resources/goniograph/check/sentences"));

  private static final Set<String> TEXT_RULES =
      Set.of(
          "number-in-prose",
          "angle-in-text",
          "side-in-text",
          "position-in-text",
          "equipment-in-text",
          "breath-holding",
          "pain-wording",
          "claim-unmarked",
          "claim-arithmetic",
          "claim-second-look",
          "claim-disputed",
          "word-forbidden",
          "word-ambiguous",
          "word-frightening",
          "word-hard",
          "personal-data");

  private static final List<Rule> RULES =
      RuleBook.rules().stream().filter(rule -> TEXT_RULES.contains(rule.page().name())).toList();

  /** Where a sentence is put: a file, and the passage it takes the place of. */
  private record Home(String file, String passage, List<Example.Edit> more) {}

  private static final Map<String, Home> HOMES =
      Map.of(
          "do", new Home(ExampleFiles.CHAIR_RISE, "Press your feet into the floor.", List.of()),
          "feel", new Home(ExampleFiles.CHAIR_RISE, "A little out of breath is fine.", List.of()),
          "ar-do", new Home(ExampleFiles.CHAIR_RISE_ARABIC, "ادفع بقدميك.", List.of()),
          "know", new Home(ExampleFiles.ADVICE, ExampleFiles.TOLD, List.of()),
          "turn", new Home(ExampleFiles.HEEL_TO_TOE, "Then do it again.", List.of()),
          "one",
              new Home(
                  ExampleFiles.CHAIR_RISE,
                  "Press your feet into the floor.",
                  List.of(
                      new Example.Edit(
                          ExampleFiles.CHAIR_RISE,
                          "{ mode: both-together }",
                          "{ mode: affected, count: per-side, ask_at_print: true }"))));

  private static List<String[]> lines(String file) {
    return ExampleLibrary.text(SENTENCES, file)
        .lines()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split(" \\| "))
        .toList();
  }

  static Stream<String[]> silent() {
    return lines("silent.txt").stream();
  }

  static Stream<String[]> speaking() {
    return lines("speaking.txt").stream();
  }

  @ParameterizedTest
  @MethodSource("silent")
  void nothingSpeaks(String home, String sentence) {
    assertEquals(List.of(), found(home, sentence), sentence);
  }

  @ParameterizedTest
  @MethodSource("speaking")
  void oneRuleSpeaksOnce(String home, String rule, String sentence) {
    assertEquals(List.of(rule), found(home, sentence).stream().map(Finding::rule).toList());
  }

  /** Whatever a finding says, it never repeats what it found of a person. */
  @Test
  void nothingRepeatsPersonalData() {
    String told = "Mrs Sample, born 3 May 1951, record number 48213, did it 3 times a day.";
    for (Finding finding : found("do", told)) {
      String said = finding.what() + finding.because() + finding.mend();
      for (String one : List.of("Sample", "1951", "May", "48213")) {
        assertFalse(said.contains(one), finding.toString());
      }
    }
  }

  /** The clinic's own table of poses says 85 degrees for a seat of 45 cm, worked out by hand. */
  @Test
  void whatAChairAndTheFloorDecideIsNamed() {
    Finding finding = found("do", "Bend your hips to 60 degrees.").get(0);
    assertTrue(finding.what().contains("on a seat of 45 cm"), finding.what());
    String truth = finding.what().replaceAll(".*true is (\\d+) degrees.*", "$1");
    assertEquals(85, Integer.parseInt(truth), 1, finding.what());
    assertTrue(finding.because().contains("figures/hp-chair-rise.yaml: hip"), finding.because());
  }

  /** A lying entry without a figure: what is asked for is a place on the floor. */
  @ParameterizedTest
  @CsvSource({
    "Lie on your back on the floor., ''",
    "Lie down. Bend your knees., ''",
    "Lie on your front on the floor., position-in-text",
    "Lie on your back on the bed., position-in-text",
    "Stand tall., position-in-text",
    "Kneel on the floor., position-in-text"
  })
  void theFirstWordsPlaceTheBody(String words, String rule) {
    List<Example.Edit> edits =
        List.of(
            edit("position: sitting", "position: lying-on-back\nlies_on: floor"),
            edit("figure: hp-chair-rise\n", "figure: not-drawn-yet\n"),
            edit("2. Sit tall near the front of the seat.", "2. " + words),
            edit("1. Sit tall\n", "1. Begin\n"));
    List<String> found = found(ExampleFiles.CHAIR_RISE, edits).stream().map(Finding::rule).toList();
    assertEquals(rule.isEmpty() ? List.of() : List.of(rule), found);
  }

  private static Example.Edit edit(String from, String to) {
    return new Example.Edit(ExampleFiles.CHAIR_RISE, from, to);
  }

  @Test
  void thereAreSixtyAndMoreOfEach() {
    assertTrue(silent().count() >= 60 && speaking().count() >= 60);
  }

  /** Errors and warnings about a text with this sentence in it, in place of another. */
  private static List<Finding> found(String home, String sentence) {
    Home at = Objects.requireNonNull(HOMES.get(home), home);
    List<Example.Edit> edits = new ArrayList<>(at.more());
    edits.add(new Example.Edit(at.file(), at.passage(), sentence));
    return found(at.file(), edits);
  }

  private static List<Finding> found(String file, List<Example.Edit> edits) {
    return new Checker(RULES)
        .check(ExampleLibrary.checked(ExampleLibrary.with(edits))).stream()
            .filter(one -> TEXT_RULES.contains(one.rule()) && one.level() != Level.NOTE)
            .filter(one -> one.at().file().equals(file))
            .toList();
  }
}
