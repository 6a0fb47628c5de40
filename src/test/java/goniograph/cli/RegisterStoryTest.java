package goniograph.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.DiskFiles;
import goniograph.source.Files;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A new exercise from blank to released sheet, through the real commands, in a copy of the demo
 * library in memory.
 */
class RegisterStoryTest {
  private static final String ID = "hp-sofa-rise";
  private static final String FOLDER = "content/exercises/" + ID + "/";
  private static final String POSE = "figures/" + ID + ".yaml";
  private static final String REGISTER = FOLDER + "register.yaml";
  private static final Pattern CODE = Pattern.compile("[0-9A-Z]{4} [0-9A-Z]{4} [0-9A-Z]{2}");

  private final Console console = new Console();

  @BeforeEach
  void copyOfTheDemoLibrary() {
    Files demo = DiskFiles.at(Path.of(""));
    for (String folder : List.of("content", "figures", "shared")) {
      for (String path : demo.list(folder)) {
        boolean register = path.endsWith("register.yaml") || path.startsWith("shared/releases/");
        if (!register) {
          console.files.write(path, demo.bytes(path).orElseThrow());
        }
      }
    }
  }

  private String text(String path) {
    return new String(console.files.bytes(path).orElseThrow(), StandardCharsets.UTF_8);
  }

  private void ok(String... command) {
    assertEquals(Exit.CLEAN, console.run(command), console.err());
  }

  private String refused(String... command) {
    assertEquals(Exit.USAGE, console.run(command), console.out());
    return console.err().strip();
  }

  private void sign(String what, String by, String role, String... more) {
    List<String> command =
        new ArrayList<>(List.of("register", "sign", what, "--as", by, "--role", role));
    command.addAll(List.of(more));
    ok(command.toArray(String[]::new));
  }

  private String state(String language) {
    ok("register", "show");
    return console
        .out()
        .lines()
        .filter(line -> line.startsWith(ID + " " + language + ": "))
        .map(line -> line.replaceFirst("^\\S+ \\S+ (\\S+).*", "$1"))
        .findFirst()
        .orElseThrow();
  }

  private void fill() {
    ok("new", "exercise", ID);
    Files texts = DiskFiles.at(Path.of("src/test/resources/goniograph/cli/" + ID));
    for (String name : texts.list("")) {
      console.files.write(FOLDER + name, texts.bytes(name).orElseThrow());
    }
    String pose = text("figures/hp-chair-rise.yaml").replace("hp-chair-rise", ID);
    console.files.with(POSE, pose);
  }

  private void signShared() {
    for (String clinician : List.of("clinician-1", "clinician-2")) {
      sign("statements", clinician, "clinical");
      sign("rules", clinician, "clinical");
    }
    sign("phrases", "author-1", "author");
    for (String what : List.of("statements", "phrases")) {
      sign(what, "translator-ar", "translator", "--language", "ar", "--unqualified");
      sign(what, "reviewer-ar", "language", "--language", "ar", "--unqualified");
    }
  }

  private void signEntry() {
    sign(ID, "author-1", "author");
    sign(ID, "clinician-1", "clinical");
  }

  private void signVersion() {
    sign(ID, "translator-ar", "translator", "--language", "ar", "--unqualified");
    sign(ID, "reviewer-ar", "language", "--language", "ar", "--unqualified");
  }

  private void edit(String path, String from, String to) {
    String before = text(path);
    assertTrue(before.contains(from), path + " has no " + from);
    console.files.with(path, before.replace(from, to));
  }

  @Test
  void fromBlankToReleasedSheet() {
    fill();
    signShared();
    assertEquals("unsigned", state("en"));
    assertEquals("unsigned", state("ar"));

    signEntry();
    assertEquals("ready", state("en"));
    assertEquals("unrecorded", state("ar"));

    signVersion();
    assertEquals("ready", state("ar"));

    edit(FOLDER + "en.md", "rest: 60 s", "rest: 45 s");
    assertEquals("void", state("en"));
    assertEquals("void", state("ar"));

    sign(ID, "author-1", "author");
    assertEquals("void", state("en"));
    sign(ID, "clinician-1", "clinical");
    assertEquals("ready", state("en"));
    assertEquals("ready", state("ar"), "a number alone costs the translator nothing");

    ok("register", "release", "2026.3", "--as", "manager-1");
    assertTrue(console.out().contains("Release 2026.3 is frozen with "), console.out());
    Matcher code = CODE.matcher(line(ID + " ar"));
    assertTrue(code.find(), console.out());

    ok("register", "show", code.group().toLowerCase(Locale.ROOT));
    assertEquals(
        """
        code      %s
        entry     hp-sofa-rise
        language  ar
        release   2026.3 of 2026-11-25
        now       ready: this page is still good
        """
            .formatted(code.group()),
        console.out());

    edit(FOLDER + "en.md", "Stand tall.", "Stand up tall.");
    ok("register", "show", code.group());
    assertTrue(console.out().contains("now       void: `hp-sofa-rise` has been edited since"));
  }

  private String line(String end) {
    return console.out().lines().filter(one -> one.endsWith(end)).findFirst().orElseThrow();
  }

  @Test
  void aChangedStepMakesOnlyThatPieceStale() {
    fill();
    signShared();
    signEntry();
    signVersion();
    edit(FOLDER + "en.md", "4. Press down", "4. Press hard");
    signEntry();
    assertEquals("ready", state("en"));
    ok("register", "show");
    assertTrue(
        console
            .out()
            .contains(ID + " ar: stale  `hp-sofa-rise` in ar is behind its source in do 4."),
        console.out());

    sign(ID, "translator-ar", "translator", "--language", "ar", "--unqualified");
    assertEquals("void", state("ar"), "the second reader has not seen it yet");
    sign(ID, "reviewer-ar", "language", "--language", "ar", "--unqualified");
    assertEquals("ready", state("ar"));
  }

  @Test
  void aSafetyWordingThatIsEditedVoidsEverySheetThatPrintsIt() {
    fill();
    signShared();
    signEntry();
    edit("shared/statements/en.yaml", "text: \"", "text: \"Mind this. ");
    assertEquals("void", state("en"));
    sign("statements", "clinician-1", "clinical");
    assertEquals("void", state("en"), "two clinicians sign the wording");
    sign("statements", "clinician-2", "clinical");
    assertEquals("ready", state("en"));
  }

  @Test
  void commentsAndLayoutVoidNothing() {
    fill();
    signShared();
    signEntry();
    edit(
        FOLDER + "en.md",
        "sides: { mode: both-together }",
        "# both legs\nsides:\n  mode: both-together");
    assertEquals("ready", state("en"));
    console.files.with(POSE, "# seen from the side\n" + text(POSE));
    assertEquals("ready", state("en"));
  }

  @Test
  void theFigureIsSignedWithTheEntry() {
    fill();
    signShared();
    signEntry();
    edit(POSE, "flexion ", "flexion 1");
    assertEquals("void", state("en"));
  }

  @Test
  void nobodySignsTheirOwnWorkAsItsReviewer() {
    fill();
    sign(ID, "author-1", "author");
    String before = text(REGISTER);
    assertEquals(
        "author-1 has signed `hp-sofa-rise` as author and cannot sign it as clinical. Have a second"
            + " person sign.",
        refused("register", "sign", ID, "--as", "author-1", "--role", "clinical"));
    assertEquals(before, text(REGISTER));

    sign(ID, "translator-ar", "translator", "--language", "ar");
    assertEquals(
        "translator-ar has signed `hp-sofa-rise` in ar as translator and cannot sign it as language."
            + " Have a second person sign.",
        refused(
            "register",
            "sign",
            ID,
            "--as",
            "translator-ar",
            "--role",
            "language",
            "--language",
            "ar"));
  }

  @Test
  void whatCannotBeSignedIsRefusedInOneSentence() {
    fill();
    assertEquals(
        "There is no entry `hp-sofa-rize` in this library; did you mean `hp-sofa-rise`? Give the id"
            + " of an entry, or statements, rules or phrases.",
        refused("register", "sign", "hp-sofa-rize", "--as", "author-1", "--role", "author"));
    assertEquals(
        "The rule file `dose-limits` is not signed in the role author. Sign with --role clinical.",
        refused("register", "sign", "rules", "--as", "author-1", "--role", "author"));
    assertEquals(
        "`fr` is not a language of this clinic. It has en, ar.",
        refused("register", "sign", ID, "--language", "fr", "--as", "t-1", "--role", "translator"));
    assertEquals(
        "`hp-sofa-rise` in ar is not yet signed by its translator as it stands. The translator signs"
            + " first.",
        refused("register", "sign", ID, "--language", "ar", "--as", "r-1", "--role", "language"));
    assertTrue(
        refused("register", "sign", ID, "--as", "Ann Other", "--role", "author")
            .startsWith("`Ann Other` is not an id."));
    assertTrue(
        refused("register", "sign", ID, "--as", "author-1", "--role", "boss")
            .contains("`boss` is not a role. Write author, clinical, translator or language."));
    assertTrue(console.files.bytes(REGISTER).isEmpty());
    assertTrue(console.files.bytes("shared/register.yaml").isEmpty());
  }

  @Test
  void aVersionThatLacksAStepCannotBeSigned() {
    fill();
    edit(FOLDER + "ar.md", "4. ادفع بقدميك. قف منتصبًا.\n", "");
    assertEquals(
        "`hp-sofa-rise` in ar lacks do 5. Translate it before it is signed.",
        refused("register", "sign", ID, "--language", "ar", "--as", "t-1", "--role", "translator"));
  }

  @Test
  void anEntryThatCannotBeReadCannotBeSigned() {
    fill();
    edit(FOLDER + "en.md", "rest: 60 s", "rest: 60");
    String refusal = refused("register", "sign", ID, "--as", "author-1", "--role", "author");
    assertTrue(refusal.startsWith("Not signed: " + FOLDER + "en.md:17: "), refusal);
  }

  @Test
  void aDamagedRegisterIsLeftAsItIs() {
    fill();
    console.files.with(REGISTER, "schema: register/1\nentry: [ { role: author, by: author-1 } ]\n");
    String before = text(REGISTER);
    String refusal = refused("register", "sign", ID, "--as", "author-1", "--role", "author");
    assertTrue(refusal.startsWith("Not signed: " + REGISTER + ":2: "), refusal);
    assertEquals(before, text(REGISTER));
  }

  @Test
  void draftsAreLeftOutOfAReleaseAndListed() {
    fill();
    signShared();
    signEntry();
    ok("register", "release", "2026.3", "--as", "manager-1");
    assertTrue(
        console.out().contains("left out      hp-sofa-rise ar: unrecorded. "), console.out());
    String manifest = text("shared/releases/2026.3.yaml");
    assertTrue(manifest.contains("entry: hp-sofa-rise\n"), manifest);

    assertEquals(
        "Release 2026.3 is frozen and stays as it is. Give the new one another name.",
        refused("register", "release", "2026.3", "--as", "manager-1"));
    assertEquals(manifest, text("shared/releases/2026.3.yaml"));
  }

  @Test
  void withNothingReadyThereIsNoRelease() {
    assertTrue(
        refused("register", "release", "2026.3", "--as", "manager-1")
            .startsWith("Not released: no sheet is ready. "));
    assertTrue(console.files.bytes("shared/releases/2026.3.yaml").isEmpty());
  }

  @Test
  void theSameSignaturesGiveTheSameBytes() {
    fill();
    signShared();
    signEntry();
    signVersion();
    String shared = text("shared/register.yaml");
    String own = text(REGISTER);
    signShared();
    signEntry();
    signVersion();
    assertEquals(shared, text("shared/register.yaml"));
    assertEquals(own, text(REGISTER));
    assertTrue(own.lines().noneMatch(line -> line.contains("{")), own);
  }

  @Test
  void aWrongCodeIsRefusedWithWhatIsWrong() {
    assertEquals(
        "`K7F3 2M9D`: A sheet code has 10 characters; this has 8.",
        refused("register", "show", "K7F3", "2M9D"));
    assertEquals(
        "No release of this library holds 0000 0000 00. Look whether the paper is from this clinic.",
        refused("register", "show", "0000000000"));
  }
}
