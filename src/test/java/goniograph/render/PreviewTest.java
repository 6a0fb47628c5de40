package goniograph.render;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class PreviewTest {
  @Test
  void preview() throws Exception {
    Paper paper =
        new PaperRenderer()
            .render(
                SampleSheet.chairRise(),
                Layout.STANDARD,
                "0".repeat(64),
                java.time.LocalDate.of(2026, 11, 25));
    Files.write(Path.of("build-output/preview.pdf"), paper.pdf());
    System.out.println(paper.overflows() + " " + paper.missing() + paper.warnings().size());
  }
}
