package goniograph.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.source.DiskFiles;
import goniograph.source.MemoryFiles;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Nothing that is not final looks final: what the bands say, and what is not printed at all. */
class BandsTest {
  private static final LocalDate DEMO = LocalDate.of(2026, 11, 25);
  private static final String ENGLISH = "content/exercises/hp-chair-rise/en.md";
  private static final List<String> TEXTS = List.of("content/", "figures/", "shared/");

  private final MemoryFiles library = new MemoryFiles();

  BandsTest() {
    DiskFiles disk = DiskFiles.at(Path.of(""));
    TEXTS.forEach(
        folder ->
            disk.list(folder.substring(0, folder.length() - 1))
                .forEach(path -> library.write(path, disk.bytes(path).orElseThrow())));
  }

  private MemoryFiles built(LocalDate today) {
    MemoryFiles out = new MemoryFiles();
    BuildOrder chairRise =
        new BuildOrder(
            List.of("hp-chair-rise"),
            List.of(),
            BuildOrder.ALL.layouts(),
            BuildOrder.ALL.papers(),
            1);
    new Builder(Examined.of(library, today), today, chairRise, line -> {}).build(out);
    return out;
  }

  private static String page(MemoryFiles out, String language) {
    return out.bytes(language + "/standard-a4/hp-chair-rise.html")
        .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
        .orElse("");
  }

  private void edit(String path, String from, String to) {
    String text = library.text(path).orElseThrow().text();
    assertTrue(text.contains(from), from);
    library.write(path, text.replace(from, to).getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aSignedReleasedSheetHasNoBandAndItsCode() {
    String page = page(built(DEMO), "en");
    assertFalse(page.contains("class=\"band\""));
    assertTrue(page.contains("Sheet code"));
  }

  @Test
  void anUnsignedSheetIsADraftWithoutACode() {
    library.delete("content/exercises/hp-chair-rise/register.yaml");
    String page = page(built(DEMO), "en");
    assertTrue(page.contains("DRAFT – NOT FOR PATIENTS"));
    assertTrue(page.contains("Not released: this print cannot be looked up"));
  }

  /** job.md, G3: past its day a band; more than 90 days past, no print. Due 2027-05-31. */
  @Test
  void anOverdueSheetSaysSoAndThenIsNotPrinted() {
    assertFalse(page(built(LocalDate.of(2027, 5, 31)), "en").contains("REVIEW OVERDUE"));
    assertTrue(page(built(LocalDate.of(2027, 6, 1)), "en").contains("REVIEW OVERDUE – ASK US"));
    assertEquals("", page(built(LocalDate.of(2027, 9, 1)), "en"));
  }

  /** An edit of what was signed voids it: no print, not even a draft. */
  @Test
  void anEditedSheetIsNotPrintedUntilItIsSignedAgain() {
    edit(ENGLISH, "Sit down slowly.", "Sit down very slowly.");
    assertEquals("", page(built(DEMO), "en"));
  }

  /** job.md, T2 and 5.8: a changed dose number alone makes no translation stale. */
  @Test
  void aChangedNumberLeavesTheTranslationFresh() {
    edit(ENGLISH, "lower: 3 s", "lower: 4 s");
    Examined examined = Examined.of(library, DEMO);
    assertFalse(
        examined.findings().stream().anyMatch(finding -> finding.rule().equals("piece-stale")));
  }

  /** job.md, T1: a changed step makes that piece stale and no other. */
  @Test
  void aChangedStepMakesOnlyItselfStale() {
    edit(ENGLISH, "Stand tall.\n5.", "Stand up tall.\n5.");
    List<String> stale =
        Examined.of(library, DEMO).findings().stream()
            .filter(finding -> finding.rule().equals("piece-stale"))
            .map(finding -> finding.language() + " " + finding.at().line())
            .toList();
    assertEquals(List.of("ar 8"), stale);
  }
}
