package goniograph.matter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class YamlReaderTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "010",
        "1:30",
        "2,5 kg",
        "10\"",
        "0x1F",
        "1_000",
        "1e3",
        "12.50",
        ".5",
        "true",
        "null",
        "~",
        "5..10 s",
        "..3",
        "2..",
        "2026-11-25",
        "-15..45 deg",
        "00",
        "+7",
        ".inf",
        "half way"
      })
  void aPlainScalarSurvivesAsTyped(String typed) {
    Node.Scalar value = scalar(root("hold: " + typed + "\n"), "hold");
    assertEquals(typed, value.raw());
    assertFalse(value.quoted());
  }

  @Test
  void theBareWordNIsAllowedAsAKey() {
    Yaml yaml = read("steps:\n  - { n: 1, hold: 5 s }\n");
    assertEquals(List.of(), yaml.findings());
    assertEquals("{steps: [{n: 1, hold: 5 s}]}", shown(yaml.root().orElseThrow()));
  }

  @Test
  void quotedTruthWordsAreText() {
    Node.Scalar value = scalar(root("languages: \"no\"\n"), "languages");
    assertEquals("no", value.raw());
    assertTrue(value.quoted());
  }

  @Test
  void placesAreCountedInBytesAndCodePointsFromTheStartOfTheFile() {
    String text = "title: 😀\nالاسم: { hold: '٣ s' }\n";
    Node.Fields inner = (Node.Fields) root(text).get("الاسم").orElseThrow();
    Span at = inner.get("hold").orElseThrow().at();
    assertEquals("'٣ s'", cut(text, at));
    assertEquals(2, at.line());
    assertEquals("الاسم: { hold: ".codePointCount(0, "الاسم: { hold: ".length()) + 1, at.column());
    assertEquals("{ hold: '٣ s' }", cut(text, inner.at()));
  }

  @Test
  void aSliceKeepsThePlacesOfTheWholeFile() {
    String text = "---\nid: x\n---\n# Title\n";
    Yaml yaml = YamlReader.read(SourceFile.of("en.md", text), 4, 10);
    Node.Scalar id = scalar((Node.Fields) yaml.root().orElseThrow(), "id");
    assertEquals(new Span("en.md", 8, 9, 2, 5, 2, 6), id.at());
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheFirstKey() {
    Node.Field field = root("\uFEFFid: x\r\nb: z\r\n").fields().get(0);
    assertEquals("id", field.key());
    assertEquals(3, field.keyAt().start());
  }

  @Test
  void aBlockMapEndsWithItsLastValue() {
    String text = "dose:\n  sets: 2\n  rest: 5 s   # pause\n\naim: x\n";
    assertEquals("sets: 2\n  rest: 5 s", cut(text, root(text).get("dose").orElseThrow().at()));
  }

  @Test
  void anEmptyValueIsAnEmptyScalarBehindItsColon() {
    Node.Scalar value = scalar(root("hold:\nrest: 5 s\n"), "hold");
    assertEquals("", value.raw());
    assertEquals(5, value.at().start());
  }

  @Test
  void anEmptyTextHasNoRootAndNoFinding() {
    Yaml yaml = read("# nothing here\n");
    assertTrue(yaml.root().isEmpty());
    assertTrue(yaml.whole() && yaml.findings().isEmpty());
  }

  @Test
  void whatStandsBeforeAFaultIsKept() {
    Yaml yaml = read("sets: 2\nreps: [8, 9\nrest: 5 s\n");
    assertFalse(yaml.whole());
    assertEquals("2", scalar((Node.Fields) yaml.root().orElseThrow(), "sets").raw());
  }

  /** YAML 1.2.2, examples 2.1 to 2.3, 2.5, 2.6 and 2.18; the reading is the one given there. */
  @Test
  void readsTheExamplesOfTheStandard() {
    assertEquals(
        "[Mark McGwire, Sammy Sosa, Ken Griffey]",
        shown("- Mark McGwire\n- Sammy Sosa\n- Ken Griffey\n"));
    assertEquals(
        "{hr: 65, avg: 0.278, rbi: 147}",
        shown("hr:  65    # Home runs\navg: 0.278 # Batting average\nrbi: 147   # Runs Batted In"));
    assertEquals(
        "{american: [Boston Red Sox, Detroit Tigers], national: [New York Mets]}",
        shown("american:\n- Boston Red Sox\n- Detroit Tigers\nnational:\n- New York Mets\n"));
    assertEquals(
        "[[name, hr, avg], [Mark McGwire, 65, 0.278]]",
        shown("- [name        , hr, avg  ]\n- [Mark McGwire, 65, 0.278]\n"));
    assertEquals(
        "{Mark McGwire: {hr: 65, avg: 0.278}}", shown("Mark McGwire: {hr: 65, avg: 0.278}\n"));
    assertEquals(
        "{plain: This unquoted scalar spans many lines., quoted: So does this quoted scalar.\n}",
        shown(
            """
            plain:
              This unquoted scalar
              spans many lines.

            quoted: "So does this
              quoted scalar.\\n"
            """));
  }

  /** YAML 1.2.2, examples 2.7 (two documents in a stream), 2.13 (literal), 2.15 (folded). */
  @Test
  void readsSeveralDocumentsAndBlockText() {
    Yaml two =
        read(
            "# Ranking\n---\n- Mark McGwire\n- Sammy Sosa\n\n# Team ranking\n---\n- Chicago Cubs\n");
    assertEquals(
        List.of("[Mark McGwire, Sammy Sosa]", "[Chicago Cubs]"),
        two.documents().stream().map(YamlReaderTest::shown).toList());
    assertEquals("{a: \\//||\\/||\n// ||  ||__\n}", shown("a: |\n  \\//||\\/||\n  // ||  ||__\n"));
    assertEquals(
        "{a: Mark McGwire's year was crippled by a knee injury.\n}",
        shown("a: >\n  Mark McGwire's\n  year was crippled\n  by a knee injury.\n"));
  }

  /** YAML 1.2.2, section 5.7, example 5.13: escaped characters. */
  @Test
  void resolvesTheEscapesOfQuotedText() {
    assertEquals("{a: Fun with \\, \" \t \n}", shown("a: \"Fun with \\\\, \\\" \\t \\n\"\n"));
    assertEquals("{a: A B C}", shown("a: \"\\x41 \\u0042 \\U00000043\"\n"));
    assertEquals("{a: here's to \"quotes\"}", shown("a: 'here''s to \"quotes\"'\n"));
  }

  private static Yaml read(String text) {
    return YamlReader.read(SourceFile.of("test.yaml", text));
  }

  private static Node.Fields root(String text) {
    Yaml yaml = read(text);
    assertEquals(List.of(), yaml.findings());
    return (Node.Fields) yaml.root().orElseThrow();
  }

  private static Node.Scalar scalar(Node.Fields fields, String key) {
    return (Node.Scalar) fields.get(key).orElseThrow();
  }

  private static String cut(String text, Span at) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return new String(Arrays.copyOfRange(bytes, at.start(), at.end()), StandardCharsets.UTF_8);
  }

  private static String shown(String text) {
    Yaml yaml = read(text);
    assertEquals(List.of(), yaml.findings());
    return shown(yaml.root().orElseThrow());
  }

  private static String shown(Node node) {
    if (node instanceof Node.Fields map) {
      return map.fields().stream()
          .map(field -> field.key() + ": " + shown(field.value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof Node.Items list) {
      return list.items().stream()
          .map(YamlReaderTest::shown)
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return node instanceof Node.Scalar scalar ? scalar.raw() : "refused";
  }
}
