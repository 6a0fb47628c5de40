package goniograph.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.DiskFiles;
import goniograph.source.Files;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands {@code check} and {@code explain}, on the demo library without its signatures. */
class CheckCommandTest {
  private static final Files DEMO = DiskFiles.at(Path.of("."));
  private static final String BALANCE = "content/exercises/ba-heel-toe-stand/en.md";

  private final Console console = new Console();

  @BeforeEach
  void demoLibrary() {
    for (String folder : List.of("content", "figures", "shared")) {
      DEMO.list(folder).stream()
          .filter(path -> !path.endsWith("register.yaml"))
          .forEach(path -> console.files.write(path, DEMO.bytes(path).orElseThrow()));
    }
  }

  private void change(String file, String from, String to) {
    String text = new String(console.files.bytes(file).orElseThrow(), StandardCharsets.UTF_8);
    assertTrue(text.contains(from), from);
    console.files.with(file, text.replace(from, to));
  }

  @Test
  void theDemoLibraryHasNeitherErrorsNorWarnings() {
    assertEquals(Exit.CLEAN, console.run("check", "--fail-on", "warning"), console.out());
    assertTrue(console.out().contains("0 errors, 0 warnings, "), console.out());
    assertTrue(console.out().endsWith(" in 4 entries as of 2026-11-25.\n"), console.out());
  }

  @Test
  void anErrorEndsWithOneAndSaysWhereWhatWhyAndHowToMend() {
    change(BALANCE, "{ n: 2, hold: 30 s,", "{ n: 2, hold: 90 s,");
    assertEquals(Exit.FINDINGS, console.run("check"));
    assertTrue(
        console
            .out()
            .contains(
                """
                error content/exercises/ba-heel-toe-stand/en.md:31:21 dose-limit
                  `hold` is 90 s; for balance at most `60 s` is allowed.
                  why: Too much is harm, too little is no treatment; most often it is a slip of the pen.
                  because: step 2: hold 90 s
                  mend: Write `60 s` or less, or have the row of the table changed and signed.
                  source: common-practice
                """),
        console.out());
  }

  @Test
  void aWarningFailsOnlyWhereAsked() {
    change(BALANCE, "review_due: 2027-02-28", "review_due: 2026-12-24");
    assertEquals(Exit.CLEAN, console.run("check"));
    assertEquals(Exit.FINDINGS, console.run("check", "--fail-on", "warning"));
  }

  @Test
  void anEntryByItselfIsNotBlamedForOthers() {
    change(BALANCE, "{ n: 2, hold: 30 s,", "{ n: 2, hold: 90 s,");
    assertEquals(Exit.CLEAN, console.run("check", "hp-chair-rise"));
    assertEquals(Exit.FINDINGS, console.run("check", "hp-chair-rise", "ba-heel-toe-stand"));
  }

  @Test
  void anEntryThatIsNotThereIsWrongUsage() {
    assertEquals(Exit.USAGE, console.run("check", "hp-chair-rose"));
    assertEquals(
        "There is no entry `hp-chair-rose`; did you mean `hp-chair-rise`?\n", console.err());
  }

  @Test
  void jsonNamesTodayAndTheEntry() {
    change(BALANCE, "surface: firm", "suface: firm");
    assertEquals(Exit.FINDINGS, console.run("check", "--format", "json"));
    JsonNode root = JsonMapper.shared().readTree(console.out());
    assertEquals("2026-11-25", root.get("today").asString());
    JsonNode unknown =
        root.get("findings").values().stream()
            .filter(one -> one.get("rule").asString().equals("field-unknown"))
            .findFirst()
            .orElseThrow();
    assertEquals("ba-heel-toe-stand", unknown.get("entry").asString());
    assertEquals("Write `surface`, or take the line out.", unknown.get("mend").asString());
  }

  @Test
  void twiceTheSameGivesTheSameBytes() {
    console.run("check", "--format", "json");
    String first = console.out();
    console.run("check", "--format", "json");
    assertEquals(first, console.out());
  }

  @Test
  void explainsARule() {
    assertEquals(Exit.CLEAN, console.run("explain", "breathe-on-effort"));
    assertTrue(console.out().startsWith("breathe-on-effort\n\nWhat: "), console.out());
    assertTrue(console.out().contains("Who may accept it: "), console.out());
  }

  @Test
  void offersTheNearestRule() {
    assertEquals(Exit.USAGE, console.run("explain", "breathe-on-efort"));
    assertEquals(
        "There is no rule `breathe-on-efort`; did you mean `breathe-on-effort`?\n", console.err());
  }

  @Test
  void mendShowsTheDifferenceMakesTheSafeOnesAndLeavesTheRest() {
    change(BALANCE, "{ n: 2, hold: 30 s,", "{ n: 2, hold: 30 sec,");
    change(BALANCE, "aim: balance", "aim: balans");
    assertEquals(Exit.FINDINGS, console.run("check", "--mend"));
    assertTrue(console.out().contains("+    - { n: 2, hold: 30 s,"), console.out());
    assertTrue(console.out().contains("1 mend made in 1 file."), console.out());
    assertTrue(console.out().contains("1 more would be asked for"), console.out());
    assertTrue(console.out().contains("`balans`"), console.out());
    assertTrue(text(BALANCE).contains("{ n: 2, hold: 30 s,"));
    assertTrue(text(BALANCE).contains("aim: balans"));
  }

  @Test
  void whatChangesTheMeaningIsAskedForAtATerminal() {
    change(BALANCE, "aim: balance", "aim: balans");
    console.answers(false);
    assertEquals(Exit.FINDINGS, console.run("check", "--mend"));
    assertTrue(text(BALANCE).contains("aim: balans"));
    console.answers(true);
    assertEquals(Exit.CLEAN, console.run("check", "--mend"));
    assertTrue(console.out().contains("Make this change? [y/N]"), console.out());
    assertTrue(text(BALANCE).contains("aim: balance"));
  }

  private String text(String file) {
    return new String(console.files.bytes(file).orElseThrow(), StandardCharsets.UTF_8);
  }

  private void longSentence() {
    console.files.delete("content/exercises/ba-heel-toe-stand/ar.md");
    change(
        BALANCE,
        "## feel",
        "6. Stand there and look at the wall and think of the sea and of the boats and of all the"
            + " gulls above the quiet harbour town.\n\n## feel");
  }

  private int accept(String rule, String role, String until) {
    return console.run(
        "register",
        "accept",
        "ba-heel-toe-stand",
        rule,
        "--as",
        "author-1",
        "--role",
        role,
        "--reason",
        "read aloud to three people",
        "--until",
        until);
  }

  @Test
  void anAcceptedWarningStandsUntilItsDayAndOnlyWordForWord() {
    longSentence();
    assertEquals(Exit.FINDINGS, console.run("check", "--fail-on", "warning"));
    assertEquals(Exit.CLEAN, accept("sentence-length", "author", "2027-01-31"), console.err());
    assertEquals(Exit.CLEAN, console.run("check", "--fail-on", "warning"), console.out());
    assertTrue(console.run("check", "--format", "json") == Exit.CLEAN);
    assertTrue(console.out().contains("\"accepted\" : true"), console.out());
    console.run("check", "--fail-on", "warning", "--today", "2027-02-01");
    assertTrue(console.out().contains("acceptance-expired"), console.out());
    change(BALANCE, "of the sea", "of the sea and the sky");
    assertEquals(Exit.FINDINGS, console.run("check", "--fail-on", "warning"));
    assertTrue(console.out().contains("acceptance-unused"), console.out());
  }

  @Test
  void anErrorIsNotAcceptedNorAWarningByTheWrongRole() {
    change(BALANCE, "{ n: 2, hold: 30 s,", "{ n: 2, hold: 90 s,");
    assertEquals(Exit.USAGE, accept("dose-limit", "clinical", "2027-01-31"));
    assertTrue(console.err().contains("cannot be accepted"), console.err());
    longSentence();
    assertEquals(Exit.USAGE, accept("sentence-length", "clinical", "2027-01-31"));
    assertTrue(console.err().contains("in the role author"), console.err());
    assertEquals(Exit.USAGE, accept("sentence-length", "author", "2025-01-31"));
  }
}
