package goniograph.render.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

/** The sample pages of the six languages, and ways to set them. */
final class Pages {
  static final List<String> LANGUAGES = List.of("en", "pl", "pt", "ar", "ne", "vi");
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private Pages() {}

  static String source(String language) {
    try (InputStream in = Pages.class.getResourceAsStream(language + ".xhtml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static PdfFacts facts(String language) {
    return new PdfFacts(
        "Sample " + language, language, language.equals("ar"), "0123456789abcdef", TODAY);
  }

  static RenderedPdf render(String language) {
    return new PdfRenderer().render(source(language), facts(language));
  }

  /** A page with one body in a language, for a test that needs nothing else. */
  static RenderedPdf renderBody(String language, String style, String body) {
    String direction = language.equals("ar") ? "rtl" : "ltr";
    String page =
        """
        <html xmlns="http://www.w3.org/1999/xhtml" lang="%s" dir="%s"><head><title>t</title>
        <style>@page { size: 210mm 297mm; margin: 10mm } * { margin: 0; padding: 0 } %s</style></head>
        <body>%s</body></html>
        """
            .formatted(language, direction, style, body);
    return new PdfRenderer().render(page, facts(language));
  }

  /** The words of a page's source: what a reader should be able to copy out. */
  static List<String> words(String language) {
    String body = source(language).replaceAll("(?s)<(head|svg).*?</\\1>", " ");
    return List.of(body.replaceAll("</?b>", "").replaceAll("<[^>]*>", " ").strip().split("\\s+"));
  }
}
