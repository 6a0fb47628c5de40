package goniograph.matter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.SourceFile;
import goniograph.source.Span;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EntryFileTest {
  private static final String ENTRY =
      """
      ---
      id: sh-turnout-hold
      ---
      # Outward-turn hold at a door frame
      ## why
      To reach and lift
      with *less* ache. [turning-helps]
      ## do
      1. Stand close, {side.arm} nearest.
      2. {s-breathe}
      3. Count to {hold.count}, then let go.
      ## landmark
      elbow touching your side
      """;

  @Test
  void splitsFrontMatterAndText() {
    EntryFile entry = read(ENTRY);
    assertEquals(List.of(), entry.findings());
    Node.Fields matter = (Node.Fields) entry.frontMatter().orElseThrow().root().orElseThrow();
    assertEquals("id", matter.fields().get(0).key());
    assertEquals("Outward-turn hold at a door frame", entry.body().title().orElseThrow().text());
    assertEquals(
        List.of("why", "do", "landmark"),
        entry.body().sections().stream().map(section -> section.key().value()).toList());
  }

  @Test
  void aLanguageVersionHasNoFrontMatter() {
    EntryFile version = read("\uFEFF# العنوان\r\n## why\r\nلترفع أشياء.\r\n");
    assertEquals(List.of(), version.findings());
    assertEquals(Optional.empty(), version.frontMatter());
    assertEquals("لترفع أشياء.", version.body().pieces("why").get(0).text());
  }

  @Test
  void numbersTheStepsAndKnowsCareLines() {
    List<Piece> steps = read(ENTRY).body().pieces("do");
    assertEquals(List.of(1, 2, 3), steps.stream().map(Piece::number).toList());
    assertEquals(Optional.of("s-breathe"), steps.get(1).careLine());
    assertTrue(steps.get(0).careLine().isEmpty());
  }

  @Test
  void placesSlotsInTheWholeFile() {
    Inline.Slot slot = read(ENTRY).body().pieces("do").get(2).slots().get(0);
    assertEquals("hold.count", slot.name());
    int at = ENTRY.indexOf("{hold.count}");
    assertEquals(new Span("en.md", at, at + 12, 11, 13, 11, 25), slot.at());
  }

  @Test
  void claimsAreLocatedAndNotPrinted() {
    Piece why = read(ENTRY).body().pieces("why").get(0);
    assertEquals("turning-helps", why.claims().get(0).id());
    assertEquals("To reach and lift with less ache.", why.plain());
    assertEquals(List.of("a", "b"), claims("It helps. [a][b]"));
    assertEquals(List.of("a", "b"), claims("It helps [a]. So much [b]."));
    assertEquals(List.of("a"), claims("یہ مدد کرتا ہے۔ [a]"));
  }

  @Test
  void escapesAndEntitiesAreResolvedInTheWordsOnly() {
    Piece piece = read("# T\n## why\nA \\* and&nbsp;&amp; b\n").body().pieces("why").get(0);
    assertEquals("A \\* and&nbsp;&amp; b", piece.text());
    assertEquals("A * and\u00A0& b", piece.plain());
  }

  /** CommonMark 0.31.2, section 6.2 (emphasis): examples 350, 378, 404 in our narrowed form. */
  @Test
  void readsEmphasisAsTheStandardSays() {
    assertEquals("[foo bar]", stress("*foo bar*"));
    assertEquals("[[foo bar]]", stress("**foo bar**"));
    assertEquals("a * foo bar*", stress("a * foo bar*"));
    assertEquals("foo_bar_", stress("foo_bar_"));
  }

  private static List<String> claims(String text) {
    EntryFile entry = read("# T\n## why\n" + text + "\n");
    assertEquals(List.of(), entry.findings());
    return entry.body().pieces("why").get(0).claims().stream().map(Inline.Claim::id).toList();
  }

  private static String stress(String text) {
    StringBuilder shown = new StringBuilder();
    show(read("# T\n## why\n" + text + "\n").body().pieces("why").get(0).parts(), shown);
    return shown.toString();
  }

  private static void show(List<Inline> parts, StringBuilder into) {
    for (Inline part : parts) {
      if (part instanceof Inline.Stress stress) {
        into.append(stress.strong() ? "[[" : "[");
        show(stress.parts(), into);
        into.append(stress.strong() ? "]]" : "]");
      } else if (part instanceof Inline.Words words) {
        into.append(words.text());
      }
    }
  }

  private static EntryFile read(String text) {
    return EntryFile.read(SourceFile.of("en.md", text));
  }
}
