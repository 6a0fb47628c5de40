package goniograph.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.DiskFiles;
import goniograph.source.Files;
import goniograph.source.SourceFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * {@code docs/poses.md} and its drawings show every word that a pose file can hold. The page must
 * be as it is made, and every drawing show what it is made to show, told in words; that its lines
 * lie where they lie today is no matter of this test.
 */
class PoseGuideTest {
  private static final String COMMAND =
      "mvn test -Dtest=PoseGuideTest -Dgoniograph.write-docs=true";
  private static final Files DOCS = DiskFiles.at(Path.of("docs"));
  private static final Files PROSE = DiskFiles.at(Path.of("src/test/resources/goniograph/docs"));
  private static final String NOTE =
      "<!-- Made by PoseGuideTest from src/test/resources/goniograph/docs/poses.md: edit that, then"
          + " write anew with "
          + COMMAND
          + " -->\n";

  @Test
  void theGuideIsAsItIsMade() {
    PoseGuide guide = new PoseGuide();
    String page = NOTE + guide.page(PROSE.text("poses.md").orElseThrow().text());
    if (Boolean.getBoolean("goniograph.write-docs")) {
      write(page, guide.drawings());
    }
    assertEquals(page, text("poses.md"), "docs/poses.md differs; write it anew: " + COMMAND);
    assertEquals(told(guide.drawings()), told(there()), "docs/poses differs: " + COMMAND);
  }

  /** A drawing of the guide is small, as all drawings are. */
  @Test
  void drawingsKeepWithinTheirSize() {
    there().forEach((name, svg) -> assertTrue(svg.length() < 40_000, name + " " + svg.length()));
  }

  private static void write(String page, SortedMap<String, String> drawings) {
    DOCS.list("poses").forEach(DOCS::delete);
    drawings.forEach((name, svg) -> write("poses/" + name, svg));
    write("poses.md", page);
  }

  private static void write(String path, String text) {
    DOCS.write(path, text.getBytes(StandardCharsets.UTF_8));
  }

  private static String text(String path) {
    return DOCS.text(path).map(SourceFile::text).orElse("");
  }

  private static SortedMap<String, String> there() {
    SortedMap<String, String> there = new TreeMap<>();
    DOCS.list("poses").forEach(path -> there.put(path.substring("poses/".length()), text(path)));
    return there;
  }

  /** What each drawing says that it shows. */
  private static SortedMap<String, String> told(SortedMap<String, String> drawings) {
    SortedMap<String, String> told = new TreeMap<>();
    drawings.forEach(
        (name, svg) -> told.put(name, svg.substring(svg.indexOf("<desc"), svg.indexOf("</desc>"))));
    return told;
  }
}
