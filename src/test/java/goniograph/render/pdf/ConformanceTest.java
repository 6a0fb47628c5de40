package goniograph.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import goniograph.testing.PdfConformance;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The PDFs keep PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2), as veraPDF reads them. */
class ConformanceTest {
  @ParameterizedTest
  @ValueSource(strings = {"en", "pl", "pt", "ar", "ne", "vi"})
  void samplePageConforms(String language) {
    assertEquals(List.of(), PdfConformance.failures(Pages.render(language).pdf()));
  }

  @Test
  void theValidatorSeesAnUntaggedFigure() {
    String drawing =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"5mm\" height=\"5mm\">"
            + "<path d=\"M0 0H5\" stroke=\"#000000\"/></svg>";
    byte[] pdf = Pages.renderBody("en", "", "<h1>Title</h1>" + drawing).pdf();
    assertFalse(PdfConformance.failures(pdf).isEmpty(), "a drawing without words must not pass");
  }

  @Test
  void namesLanguageAndTitle() {
    String pdf = new String(Pages.render("ne").pdf(), StandardCharsets.ISO_8859_1);
    assertEquals(true, pdf.contains("<dc:language><rdf:Bag><rdf:li>ne</rdf:li>"));
  }
}
