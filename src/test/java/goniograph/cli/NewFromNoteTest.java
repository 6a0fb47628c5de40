package goniograph.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.finding.Finding;
import goniograph.library.Library;
import goniograph.source.DiskFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plain-text notes as they lie about in a clinic; all three are written for this test. */
class NewFromNoteTest {
  private static final String ENTRY = "content/exercises/kn-new/en.md";

  private static final String WITH_HEADINGS =
      """
      Heel slide on the bed

      Why:
      To bend the knee more easily.
      How to do it:
      1. Lie on your back.
      2. Slide your heel towards you and hold for 10 seconds.
      3. Slide it back. Rest for 30 seconds after each set.
      You should feel:
      A pull at the front of the knee.
      Easier: put a plastic bag under your heel.
      Harder: bend it to 110 degrees.
      How often: 8 times, 2 sets, 3 times a day for 6 weeks.
      Stop if your calf swells.
      """;
  private static final String IN_SENTENCES =
      """
      Calf raise at the sink
      This helps you to push off when you walk. Stand at the sink with both hands on it. Lift your
      heels slowly. You should feel the back of your lower legs work. If this is too hard, sit
      down and do the same. Ask Mary for the blue sheet. Repeat 12 times.
      Your heels should be level at the top. Do not do this if your heel is sore.
      """;
  private static final String IN_A_LIST =
      """
      - Sit on a chair
      - Straighten your leg, hold 5 seconds
      - Hold 10 seconds in the second week
      - Let go slowly, count to 3
      - 3 x 10, effort 4 out of 10
      - Use {a} [small] 2 kg weight
      """;

  private final Console console = new Console();

  @BeforeEach
  void aLibrary() {
    console.files.with("shared/clinic.yaml", "name: Quillhaven\ntime_zone: Etc/UTC\n");
  }

  private String from(String note) {
    console.files.with("note.txt", note);
    assertEquals(
        Exit.CLEAN, console.run("new", "exercise", "kn-new", "--from", "note.txt"), console.err());
    return new String(console.files.bytes(ENTRY).orElseThrow(), StandardCharsets.UTF_8);
  }

  private static String body(String entry) {
    return entry.substring(entry.lastIndexOf("\n---\n") + 5);
  }

  @Test
  void headingsSortALineEach() {
    String entry = from(WITH_HEADINGS);
    assertEquals(
        """
        # Heel slide on the bed
        ## why
        To bend the knee more easily.
        ## do
        1. Lie on your back.
        2. Slide your heel towards you and hold for {hold}.
        3. Slide it back. Rest for {rest} after each set.
        ## feel
        A pull at the front of the knee.
        ## easier
        put a plastic bag under your heel.
        ## harder
        bend it to {number}.
        ## landmark
        """,
        body(entry));
    for (String question :
        List.of(
            "  hold:  # the note says \"10 seconds\": hold?",
            "  rest:  # the note says \"30 seconds\": rest?",
            "  reps:  # the note says \"8 times\": reps?",
            "  sets:  # the note says \"2 sets\": sets?",
            "    per_day:  # the note says \"3 times a day\": per_day?",
            "  duration:  # the note says \"6 weeks\": duration?",
            "figure: kn-new  # the note says \"110 degrees\": an angle of the pose file?")) {
      assertTrue(entry.contains("\n" + question + "\n"), question + " in\n" + entry);
    }
  }

  @Test
  void sentencesAreSortedByTheirCues() {
    String entry = from(IN_SENTENCES);
    assertEquals(
        """
        # Calf raise at the sink
        ## why
        This helps you to push off when you walk.
        ## do
        1. Stand at the sink with both hands on it.
        2. Lift your heels slowly.
        3. Repeat {reps}.
        ## feel
        You should feel the back of your lower legs work.
        ## easier
        If this is too hard, sit down and do the same.
        ## harder
        ## landmark
        Your heels should be level at the top.
        """,
        body(entry));
    assertTrue(
        entry.contains(
            """
            # Of the note, about harm: choose statements that say it:
            #   Do not do this if your heel is sore.
            # Of the note, not sorted:
            #   Ask Mary for the blue sheet.
            ---
            """),
        entry);
  }

  @Test
  void twoNumbersForOneFieldLeaveBothPlacesOpen() {
    String entry = from(IN_A_LIST);
    assertTrue(
        entry.contains("2. Straighten your leg, hold {number}\n3. Hold {number} in the"), entry);
    assertTrue(entry.contains("says \"5 seconds\": hold? the note says \"10 seconds\": hold?"));
    assertTrue(entry.contains("  effort:  # the note says \"4\": effort, or pain.during_max?"));
    assertTrue(entry.contains("    kind:  # the note says \"2 kg\": load.mass?"), entry);
    assertTrue(body(entry).contains("Use (a) (small) {number} weight"), entry);
  }

  @ParameterizedTest
  @ValueSource(strings = {WITH_HEADINGS, IN_SENTENCES, IN_A_LIST})
  void noNumberIsTypedAndNoWordIsLost(String note) {
    String entry = from(note);
    assertFalse(body(entry).replaceAll("(?m)^[0-9]+\\. ", "").matches("(?s).*[0-9].*"), entry);
    for (String word :
        note.replaceAll("(?m)^([0-9]\\.|[A-Za-z ]+:$|Easier:|Harder:|How often:)", "")
            .split("[^A-Za-z0-9]+")) {
      assertTrue(entry.contains(word), word + " in\n" + entry);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {WITH_HEADINGS, IN_SENTENCES, IN_A_LIST})
  void everyFieldIsStillOpen(String note) {
    console.run("new", "exercise", "kn-blank");
    long blank = empty("content/exercises/kn-blank/en.md");
    from(note);
    assertEquals(blank, empty(ENTRY));
  }

  private long empty(String path) {
    return Library.read(console.files).findings().stream()
        .filter(finding -> finding.at().file().equals(path))
        .map(Finding::rule)
        .filter("field-empty"::equals)
        .count();
  }

  @Test
  void anOpenPlaceIsRefusedUntilSomebodyDecides() {
    String filled =
        DiskFiles.at(Path.of("."))
            .text("content/exercises/hp-chair-rise/en.md")
            .orElseThrow()
            .text()
            .replace("id: hp-chair-rise", "id: kn-new")
            .replaceAll("(?s)\n---\n.*", "\n---\n");
    String text = body(from(IN_A_LIST));
    console.files.with(ENTRY, filled + text);
    console.run("check", "kn-new");
    assertTrue(console.out().contains(" slot-unknown\n  `{number}`"), console.out());
  }

  @Test
  void aNoteThatIsNotThereIsSaid() {
    assertEquals(Exit.USAGE, console.run("new", "exercise", "kn-new", "--from", "no.txt"));
    assertEquals("There is no file `no.txt`.\n", console.err());
    assertTrue(console.files.bytes(ENTRY).isEmpty());
  }
}
