package goniograph.render.pdf;

import com.openhtmltopdf.bidi.support.ICUBidiSplitter;
import com.openhtmltopdf.bidi.support.ICUBreakers;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.TextDirection;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgExternalResourceMode;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgScriptMode;
import com.openhtmltopdf.util.LogMessageId;
import com.openhtmltopdf.util.XRRuntimeException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jspecify.annotations.Nullable;

/**
 * Sets XHTML as tagged PDF. A renderer holds nothing; any number of threads may use it, one page a
 * thread at a time.
 */
public final class PdfRenderer {
  /** Said of every page without a description, which neither standard asks for. */
  private static final LogMessageId NO_DESCRIPTION =
      LogMessageId.LogMessageId0Param.GENERAL_PDF_ACCESSIBILITY_NO_DOCUMENT_DESCRIPTION_PROVIDED;

  static {
    LayoutEngine.prepare();
  }

  /**
   * Sets a page.
   *
   * @param xhtml well-formed XHTML with {@code html lang dir}, {@code title}, its style in a {@code
   *     style} element and its drawings inline; nothing but {@code data:} addresses is fetched
   * @throws IllegalArgumentException when the XHTML is not well-formed: a fault of its template
   */
  public RenderedPdf render(String xhtml, PdfFacts facts) {
    List<String> warnings = new ArrayList<>();
    SheetFonts fonts = new SheetFonts(facts.language());
    ClusterTextRenderer text = new ClusterTextRenderer(fonts, facts.rightToLeft());
    try (PDDocument document = new PDDocument();
        PdfBoxRenderer renderer = builder(xhtml, facts, document, warnings).buildPdfRenderer()) {
      renderer.getSharedContext().setFontResolver(fonts);
      renderer.getSharedContext().setTextRenderer(text);
      boolean said = Decorations.allSaid(xhtml);
      byte[] bytes = write(renderer, document, facts, said);
      if (said) {
        warnings.removeIf(Decorations::isWarning);
      }
      return new RenderedPdf(
          bytes, document.getNumberOfPages(), measure(renderer), text.missing(), warnings);
    } catch (XRRuntimeException e) {
      throw new IllegalArgumentException("the page cannot be set", e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] write(
      PdfBoxRenderer renderer, PDDocument document, PdfFacts facts, boolean said)
      throws IOException {
    renderer.layout();
    TableMirror.apply(renderer.getRootBox());
    renderer.createPDFWithoutClosing();
    if (said) {
      Decorations.silence(document);
    }
    DocumentFacts.write(document, facts);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  private static List<BlockMeasure> measure(PdfBoxRenderer renderer) {
    return Measures.of(
        renderer.getRootBox(), renderer.getSharedContext().newRenderingContextInstance());
  }

  private static PdfRendererBuilder builder(
      String xhtml, PdfFacts facts, PDDocument document, List<String> warnings) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePDDocument(document);
    builder.withHtmlContent(xhtml, null);
    builder.usePdfUaAccessibility(true);
    builder.usePdfAConformance(PdfAConformance.PDFA_2_A);
    builder.useColorProfile(DocumentFacts.SRGB);
    builder.useUnicodeBidiSplitter(new ICUBidiSplitter.ICUBidiSplitterFactory());
    builder.useUnicodeBidiReorderer(new RightToLeftMark());
    builder.useUnicodeLineBreaker(
        new ICUBreakers.ICULineBreaker(Locale.forLanguageTag(facts.language())));
    builder.defaultTextDirection(facts.rightToLeft() ? TextDirection.RTL : TextDirection.LTR);
    builder.useSVGDrawer(new BatikSVGDrawer(SvgScriptMode.SECURE, SvgExternalResourceMode.SECURE));
    builder.useUriResolver((base, uri) -> allowed(uri, warnings));
    builder.withDiagnosticConsumer(
        diagnostic -> {
          boolean serious = diagnostic.getLevel().intValue() >= Level.WARNING.intValue();
          if (serious && diagnostic.getLogMessageId() != NO_DESCRIPTION) {
            warnings.add(diagnostic.getFormattedMessage());
          }
        });
    return builder;
  }

  private static @Nullable String allowed(String uri, List<String> warnings) {
    if (uri.startsWith("data:")) {
      return uri;
    }
    warnings.add("refused to fetch " + uri);
    return null;
  }
}
