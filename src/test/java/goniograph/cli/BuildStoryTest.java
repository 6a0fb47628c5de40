package goniograph.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.DiskFiles;
import goniograph.source.Files;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A new exercise from blank to sheet and on to the next edit, through the real commands, in a copy
 * of the demo library on disk.
 */
class BuildStoryTest {
  private static final String ID = "hp-sofa-rise";
  private static final String ENTRY = "content/exercises/" + ID + "/en.md";
  private static final String OUT = "build-output/sheets/";
  private static final String SHEET = OUT + "en/standard-a4/" + ID + ".html";

  @TempDir private Path folder;
  private String out = "";
  private String err = "";

  @BeforeEach
  void copyOfTheDemoLibrary() {
    Files demo = DiskFiles.at(Path.of(""));
    for (String below : List.of("content", "figures", "shared")) {
      for (String path : demo.list(below)) {
        if (!path.endsWith("register.yaml") && !path.startsWith("shared/releases/")) {
          files().write(path, demo.bytes(path).orElseThrow());
        }
      }
    }
  }

  private Files files() {
    return DiskFiles.at(folder);
  }

  private int run(String... arguments) {
    StringWriter said = new StringWriter();
    StringWriter refused = new StringWriter();
    World world =
        new World(
            new PrintWriter(said),
            new PrintWriter(refused),
            path -> DiskFiles.at(folder.resolve(path)),
            zone -> LocalDate.of(2026, 11, 25),
            Optional.empty());
    int code = Goniograph.run(world, arguments);
    out = said.toString();
    err = refused.toString();
    return code;
  }

  private String text(String path) {
    return new String(files().bytes(path).orElseThrow(), StandardCharsets.UTF_8);
  }

  /** The words of the sheet on screen. */
  private String seen() {
    String page = text(SHEET);
    return page.substring(page.indexOf("<main"))
        .replaceAll("(?s)<svg.*?</svg>|<[^>]*>", " ")
        .replaceAll("[\\s\\h]+", " ");
  }

  private void edit(String path, String from, String to) {
    String before = text(path);
    assertTrue(before.contains(from), path + " has no " + from);
    files().write(path, before.replace(from, to).getBytes(StandardCharsets.UTF_8));
  }

  private void fill() {
    Files texts = DiskFiles.at(Path.of("src/test/resources/goniograph/cli/" + ID));
    for (String name : texts.list("")) {
      files().write("content/exercises/" + ID + "/" + name, texts.bytes(name).orElseThrow());
    }
    byte[] pose =
        text("figures/hp-chair-rise.yaml")
            .replace("hp-chair-rise", ID)
            .getBytes(StandardCharsets.UTF_8);
    files().write("figures/" + ID + ".yaml", pose);
  }

  @Test
  void fromBlankToSheetAndOnToTheNextEdit() {
    assertEquals(Exit.CLEAN, run("new", "exercise", ID), err);
    assertEquals(Exit.FINDINGS, run("check", ID));
    List<String> empty =
        out.lines()
            .filter(line -> line.matches("error " + ENTRY + ":\\d+:\\d+ field-empty"))
            .toList();
    assertEquals(empty.stream().distinct().toList(), empty, "one finding a field");
    assertTrue(empty.size() > 25, out);

    fill();
    assertEquals(Exit.CLEAN, run("check", ID, "--fail-on", "warning"), out);

    assertEquals(Exit.CLEAN, run("build", ID, "--languages", "en"), out + err);
    assertEquals(
        """
        setting  1 sheet
        written  2 files
        sheets   1
          build-output/sheets/en/standard-a4/hp-sofa-rise.pdf
        """,
        out.lines().skip(3).map(line -> line + "\n").reduce("", String::concat));
    assertTrue(seen().contains("Rest 1 minute"), seen());
    assertTrue(files().bytes(SHEET.replace(".html", ".pdf")).isPresent());

    edit(ENTRY, "rest: 60 s", "rest: 45 s");
    assertEquals(Exit.CLEAN, run("build", ID, "--languages", "en"), out + err);
    assertTrue(seen().contains("Rest 45 seconds"), seen());
    assertFalse(seen().contains("Rest 1 minute"), seen());
  }

  @Test
  void oneBrokenEntryLeavesTheOthersWholeAndTakesItsOldSheetAway() {
    fill();
    assertEquals(Exit.CLEAN, run("build", ID, "--languages", "en"), out + err);
    assertTrue(files().bytes(SHEET).isPresent());

    edit(ENTRY, "rest: 60 s", "rest: a while");
    assertEquals(Exit.FINDINGS, run("build", "--languages", "en"));
    assertTrue(out.contains("error " + ENTRY + ":"), out);
    assertTrue(out.contains("left out en/standard-a4/" + ID + ": the entry has errors\n"), out);
    assertEquals(
        List.of("ad-how-much-pain", "ba-heel-toe-stand", "hp-chair-rise", "sh-row-band"),
        files().list(OUT + "en").stream()
            .filter(path -> path.endsWith(".pdf"))
            .map(path -> path.replaceAll(".*/|\\.pdf", ""))
            .toList());
  }

  /** An entry whose front matter cannot be read at all. */
  @Test
  void anEntryThatCannotBeReadIsNamed() {
    fill();
    edit(ENTRY, "---\nschema", "schema");
    assertEquals(Exit.FINDINGS, run("build", "--languages", "en"));
    assertTrue(out.contains("front-matter-missing"), out);
    assertTrue(files().bytes(SHEET.replace(ID, "hp-chair-rise")).isPresent());
  }

  @Test
  void wrongUsageEndsWithTwoAndWritesNothing() {
    List<String> before = files().list("");
    for (String[] wrong :
        new String[][] {
          {"build", "hp-chair-rose"},
          {"build", "--languages", "xx"},
          {"build", "--layouts", "poster"},
          {"build", "--papers", "a3"},
          {"build", "--jobs", "0"},
          {"build", "--jobs", "many"},
          {"build", "--today", "tomorrow"},
          {"build", "--library", "nowhere"},
          {"bild"}
        }) {
      assertEquals(Exit.USAGE, run(wrong), String.join(" ", wrong) + "\n" + out + err);
      assertFalse(err.isBlank(), String.join(" ", wrong));
    }
    assertEquals(before, files().list(""));
  }

  @Test
  void aDamagedRegisterOfAnEntryIsOneFinding() {
    fill();
    String register = "content/exercises/" + ID + "/register.yaml";
    files().write(register, "signed by everyone\n".getBytes(StandardCharsets.UTF_8));
    assertEquals(Exit.FINDINGS, run("check", ID));
    assertEquals(
        List.of("error " + register + ":1:1 register-damaged"),
        out.lines().filter(line -> line.contains(register + ":")).toList());
  }

  @Test
  void whatIsNotSignedIsOneFindingAPlace() {
    run("check");
    List<String> places =
        out.lines().filter(line -> line.endsWith(" signature-missing")).sorted().toList();
    assertEquals(places.stream().distinct().toList(), places);
    assertEquals(
        List.of("lacks a signature in the role translator and a signature in the role language."),
        out.lines()
            .filter(line -> line.startsWith("  The wording of `s-") && line.contains("` in ar "))
            .map(line -> line.replaceAll("^  The wording of `s-[a-z`, -]+` in ar ", ""))
            .toList());
    assertTrue(out.contains("`s-chest`, `s-dizzy-stop`"), out);
  }
}
