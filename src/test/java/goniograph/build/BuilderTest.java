package goniograph.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.render.Layout;
import goniograph.source.DiskFiles;
import goniograph.source.MemoryFiles;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an error in shared words stops, on the demo library with one phrase taken out. */
class BuilderTest {
  private static final LocalDate TODAY = LocalDate.parse("2026-11-25");
  private static final BuildOrder ONE =
      new BuildOrder(
          List.of("ad-how-much-pain"), List.of(), List.of(Layout.ALL.get(0)), List.of("a4"), 1);

  private static MemoryFiles library() {
    MemoryFiles files = new MemoryFiles();
    DiskFiles demo = DiskFiles.at(Path.of(""));
    for (String folder : List.of("content", "figures", "shared")) {
      demo.list(folder).forEach(path -> files.write(path, demo.bytes(path).orElseThrow()));
    }
    return files;
  }

  private static MemoryFiles without(String phrase, String language) {
    MemoryFiles files = library();
    String path = "shared/phrases/" + language + ".yaml";
    String text = files.text(path).orElseThrow().text();
    assertTrue(text.contains("\n  " + phrase + ":"));
    files.write(
        path,
        text.replaceFirst("\n  " + phrase + ":.*", "")
            .getBytes(java.nio.charset.StandardCharsets.UTF_8));
    return files;
  }

  private static BuildReport build(MemoryFiles library) {
    return new Builder(Examined.of(library, TODAY), TODAY, ONE, line -> {})
        .build(new MemoryFiles());
  }

  @Test
  void aFaultInOneLanguageLeavesTheOthersPrinted() {
    BuildReport report = build(without("needs", "ar"));
    assertEquals(List.of("en/standard-a4/ad-how-much-pain"), report.sheets());
    assertTrue(report.leftOut().get(0).startsWith("ar/standard-a4/"), report.leftOut().toString());
    assertTrue(
        report.findings().stream().anyMatch(finding -> finding.rule().equals("phrase-missing")));
  }

  @Test
  void aFaultInTheSourceLanguageStopsAll() {
    assertEquals(List.of(), build(without("needs", "en")).sheets());
  }
}
