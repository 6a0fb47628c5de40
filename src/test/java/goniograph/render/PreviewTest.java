package goniograph.render;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PreviewTest {
  @Test
  void preview() throws Exception {
    TemplateEngine engine =
        TemplateEngine.createPrecompiled(
            null, ContentType.Html, null, "goniograph.render.templates");
    StringOutput out = new StringOutput();
    String css =
        new String(
            PreviewTest.class.getResourceAsStream("/goniograph/render/standard.css").readAllBytes(),
            StandardCharsets.UTF_8);
    engine.render(
        "paper/standard.jte",
        Map.of(
            "sheet",
            SampleSheet.chairRise(),
            "glyphs",
            new Glyphs(false, 1),
            "plan",
            new PaperPlan(false, "latn", PaperPlan.TOP),
            "style",
            css),
        out);
    Files.writeString(Path.of("build-output/preview.html"), out.toString());
  }
}
