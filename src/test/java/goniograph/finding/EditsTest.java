package goniograph.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.source.MemoryFiles;
import goniograph.source.SourceFile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EditsTest {
  private static final SourceFile FILE = SourceFile.of("a.md", "hÖld: 10 sec, rest: 5 sec\n");
  private static final MemoryFiles FILES = new MemoryFiles().with("a.md", FILE.text());

  private static Finding mend(Edit... edits) {
    return Finding.error("rule", FILE.span(0, 1), "", "", "")
        .withMend(MendGrade.SAFE, List.of(edits));
  }

  private static Edit edit(int from, int to, String text) {
    return new Edit(FILE.span(from, to), text);
  }

  private static String applied(Finding... mends) {
    Map<String, byte[]> changed = Edits.applied(FILES, List.of(mends));
    return changed.isEmpty() ? "" : new String(changed.get("a.md"), StandardCharsets.UTF_8);
  }

  @Test
  void editsOfOneFileAreMadeTogetherInAnyOrder() {
    assertEquals(
        "hÖld: 10 s, rest: 5 s\n", applied(mend(edit(22, 25, "s")), mend(edit(9, 12, "s"))));
  }

  @Test
  void textIsPutInAtAnEmptyPlace() {
    assertEquals("hÖld: 10 sec, no rest: 5 sec\n", applied(mend(edit(14, 14, "no "))));
  }

  @Test
  void ofTwoMendsThatMeetOnlyTheFirstIsMadeAndAMendIsMadeWholeOrNotAtAll() {
    assertEquals(
        "hÖld: 10 s, rest: 5 sec\n",
        applied(mend(edit(9, 12, "s")), mend(edit(10, 12, "S"), edit(22, 25, "s"))));
  }

  @Test
  void nothingToMendChangesNothing() {
    assertEquals("", applied(mend()));
  }
}
