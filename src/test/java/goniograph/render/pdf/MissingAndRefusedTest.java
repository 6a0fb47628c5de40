package goniograph.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.testing.PdfConformance;
import goniograph.type.Family;
import goniograph.type.MissingGlyph;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a page asks for and cannot have is said, and nothing is drawn or fetched for it. */
class MissingAndRefusedTest {
  @Test
  void aCharacterNoFontShowsIsNamed() {
    RenderedPdf pdf = Pages.renderBody("en", "", "<h1>Tick \u2713 here \u2713</h1>");
    assertEquals(List.of(new MissingGlyph(0x2713, Family.LATIN)), pdf.missing());
    assertEquals("U+2713", pdf.missing().get(0).code());
    assertEquals("CHECK MARK", pdf.missing().get(0).name());
    assertEquals(List.of(), PdfConformance.failures(pdf.pdf()), "no .notdef glyph may be drawn");
  }

  @Test
  void samplePagesMissNothing() {
    for (String language : Pages.LANGUAGES) {
      assertEquals(List.of(), Pages.render(language).missing(), language);
      assertEquals(List.of(), Pages.render(language).warnings(), language);
    }
  }

  @Test
  void addressesOutsideThePageAreRefused() {
    RenderedPdf pdf =
        Pages.renderBody(
            "en",
            "",
            "<h1>A</h1><img alt='a' src='http://192.0.2.1/a.png'/><img alt='b' src='file:///etc/hostname'/>");
    assertFalse(pdf.warnings().isEmpty());
  }

  @Test
  void entitiesFromFilesAreNotRead() {
    String page =
        """
        <!DOCTYPE html [<!ENTITY e SYSTEM "file:///etc/hostname">]>
        <html xmlns="http://www.w3.org/1999/xhtml" lang="en"><head><title>t</title></head>
        <body><p id="fit-p">a&e;b</p></body></html>
        """;
    RenderedPdf pdf = new PdfRenderer().render(page, Pages.facts("en"));
    assertEquals("ab", pdf.blocks().get(0).lines().get(0).text());
  }

  @Test
  void aPageThatIsNotWellFormedIsTheTemplatesFault() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new PdfRenderer().render("<html><p></html>", Pages.facts("en")));
  }

  @Test
  void wordsOfAnotherScriptFallBackToTheirFamily() {
    RenderedPdf pdf =
        Pages.renderBody("en", "body { font-family: 'Noto Sans' }", "<h1>A قف B बस्नुहोस् C</h1>");
    assertEquals(List.of(), pdf.missing());
    assertTrue(pdf.pages() == 1);
  }
}
