package goniograph.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.finding.Finding;
import goniograph.library.Library;
import goniograph.matter.Node;
import goniograph.matter.YamlReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Blanks: every field there, empty, explained; nothing is ever overwritten. */
class NewCommandTest {
  private static final String ENTRY = "content/exercises/kn-heel-slide/en.md";
  private static final String POSE = "figures/kn-heel-slide.yaml";

  private final Console console = new Console();

  @BeforeEach
  void aLibrary() {
    console.files.with("shared/clinic.yaml", "name: Quillhaven\ntime_zone: Etc/UTC\n");
  }

  private String text(String path) {
    return new String(console.files.bytes(path).orElseThrow(), StandardCharsets.UTF_8);
  }

  private List<Finding> findings(String path) {
    return Library.read(console.files).findings().stream()
        .filter(finding -> finding.at().file().equals(path))
        .toList();
  }

  /** Lines such as {@code region:} that wait for a value. */
  private Stream<String> emptyFields(String path) {
    List<String> lines = text(path).lines().toList();
    return Stream.iterate(0, i -> i + 1)
        .limit(lines.size() - 1)
        .filter(i -> lines.get(i).matches(" *[a-z_]+:"))
        .filter(i -> indent(next(lines, i)) <= indent(lines.get(i)))
        .map(i -> (i + 1) + " " + lines.get(i).strip());
  }

  private static String next(List<String> lines, int i) {
    return lines.subList(i + 1, lines.size()).stream()
        .filter(line -> !line.strip().startsWith("#") && !line.isBlank())
        .findFirst()
        .orElse("");
  }

  private static int indent(String line) {
    return line.length() - line.stripLeading().length();
  }

  @Test
  void anExerciseComesWithItsPose() {
    assertEquals(Exit.CLEAN, console.run("new", "exercise", "kn-heel-slide"), console.err());
    assertTrue(text(ENTRY).contains("\nid: kn-heel-slide\n"));
    assertTrue(text(POSE).contains("\npose: kn-heel-slide\n"));
    assertEquals(
        """
        Made content/exercises/kn-heel-slide/en.md
        Made figures/kn-heel-slide.yaml
        Fill in every field, then look what is still open: `goniograph check kn-heel-slide`.
        """,
        console.out());
  }

  @Test
  void anUntouchedExerciseHasOneFindingForEachEmptyField() {
    console.run("new", "exercise", "kn-heel-slide");
    List<String> found =
        findings(ENTRY).stream()
            .filter(finding -> finding.rule().equals("field-empty"))
            .map(finding -> finding.at().line() + " " + finding.what().split("`")[1] + ":")
            .map(line -> line.replaceAll(" ([a-z_]+\\.)+", " "))
            .toList();
    assertEquals(emptyFields(ENTRY).toList(), found);
    assertTrue(found.size() > 25, found.toString());
  }

  @Test
  void whatElseAnUntouchedExerciseLacksIsItsText() {
    console.run("new", "exercise", "kn-heel-slide");
    assertEquals(
        List.of(
            "text-title-missing",
            "section-empty why",
            "section-empty do",
            "section-empty feel",
            "section-empty easier",
            "section-empty harder",
            "section-empty landmark"),
        others(ENTRY));
  }

  @Test
  void anUntouchedTopicHasOneFindingForEachEmptyFieldAndSection() {
    console.run("new", "advice", "ad-bad-day");
    String path = "content/advice/ad-bad-day/en.md";
    assertEquals(
        List.of("during_max", "statements", "evidence", "review_due"),
        findings(path).stream()
            .filter(finding -> finding.rule().equals("field-empty"))
            .map(finding -> finding.what().split("`")[1].replace("pain.", ""))
            .toList());
    assertEquals(
        List.of(
            "text-title-missing", "section-empty why", "section-empty do", "section-empty know"),
        others(path));
  }

  private List<String> others(String path) {
    return findings(path).stream()
        .filter(finding -> !finding.rule().equals("field-empty"))
        .map(
            finding ->
                finding.rule().equals("section-empty")
                    ? finding.rule() + " " + finding.what().replaceAll("`## ([a-z]+)`.*", "$1")
                    : finding.rule())
        .toList();
  }

  @Test
  void everyEmptyFieldOfAPoseIsExplained() {
    console.run("new", "exercise", "kn-heel-slide");
    Node.Fields pose =
        (Node.Fields) YamlReader.read(console.files.text(POSE).orElseThrow()).root().orElseThrow();
    List<String> lines = text(POSE).lines().toList();
    for (Node.Field field : pose.fields()) {
      String before = lines.get(field.keyAt().line() - 2);
      assertTrue(before.startsWith("#"), field.key() + " has no comment above it");
    }
    assertEquals(8, pose.fields().size() - 1 + 0);
  }

  @Test
  void nothingIsEverOverwritten() {
    console.files.with(ENTRY, "mine");
    assertEquals(Exit.USAGE, console.run("new", "exercise", "kn-heel-slide"));
    assertEquals(
        "There is an entry `kn-heel-slide` in content/exercises already. Choose another name.\n",
        console.err());
    assertEquals("mine", text(ENTRY));
    assertTrue(console.files.bytes(POSE).isEmpty());
  }

  @Test
  void aPoseThatIsThereStopsTheWholeBlank() {
    console.files.with(POSE, "pose: mine");
    byte[] before = console.files.bytes(POSE).orElseThrow();
    assertEquals(Exit.USAGE, console.run("new", "exercise", "kn-heel-slide"));
    assertArrayEquals(before, console.files.bytes(POSE).orElseThrow());
    assertTrue(console.files.bytes(ENTRY).isEmpty());
  }

  @Test
  void aBadIdIsRefusedWithTheRightSpelling() {
    assertEquals(Exit.USAGE, console.run("new", "exercise", "Heel Slide!"));
    assertEquals(
        "`Heel Slide!` is not an id. Use lower-case letters, digits and single hyphens, for"
            + " instance `heel-slide`.\n",
        console.err());
  }

  @Test
  void withoutALibraryNothingIsMade() {
    console.files.delete("shared/clinic.yaml");
    assertEquals(Exit.USAGE, console.run("new", "advice", "ad-bad-day"));
    assertEquals(
        "There is no library in `.`: it has no shared/clinic.yaml. Give the library folder with"
            + " --library DIR.\n",
        console.err());
  }

  @Test
  void theKindMustBeSaid() {
    assertEquals(Exit.USAGE, console.run("new"));
    assertTrue(console.err().contains("`goniograph new --help`"), console.err());
  }
}
