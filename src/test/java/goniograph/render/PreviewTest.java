package goniograph.render;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import goniograph.render.pdf.*;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PreviewTest {
  static String css(String name) throws Exception {
    return new String(
        PreviewTest.class.getResourceAsStream("/goniograph/render/" + name).readAllBytes(),
        StandardCharsets.UTF_8);
  }

  @Test
  void preview() throws Exception {
    TemplateEngine engine =
        TemplateEngine.createPrecompiled(
            null, ContentType.Html, null, "goniograph.render.templates");
    StringOutput out = new StringOutput();
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
            css("standard.css")),
        out);
    Files.writeString(Path.of("build-output/preview.html"), out.toString());
    RenderedPdf pdf =
        new PdfRenderer()
            .render(
                out.toString(),
                new PdfFacts(
                    "Chair rise",
                    "en",
                    false,
                    "0".repeat(64),
                    java.time.LocalDate.of(2026, 11, 25)));
    Files.write(Path.of("build-output/preview.pdf"), pdf.pdf());
    System.out.println(pdf.warnings());
    StringOutput screen = new StringOutput();
    engine.render(
        "screen/sheet.jte",
        Map.of(
            "sheet", SampleSheet.chairRise(),
            "glyphs", new Glyphs(false, 1),
            "style", css("screen.css")),
        screen);
    Files.writeString(Path.of("build-output/screen.html"), screen.toString());
  }
}
