package goniograph.testing;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Judges PDFs by veraPDF, the reference validator of PDF/A and PDF/UA. */
public final class PdfConformance {
  static {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private PdfConformance() {}

  /** What breaks PDF/UA-1 (ISO 14289-1) or PDF/A-2a (ISO 19005-2); empty for a sound file. */
  public static List<String> failures(byte[] pdf) {
    List<String> failures = new ArrayList<>();
    for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFUA_1, PDFAFlavour.PDFA_2_A)) {
      failures.addAll(failures(pdf, flavour));
    }
    return failures;
  }

  private static List<String> failures(byte[] pdf, PDFAFlavour flavour) {
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      List<String> failures = new ArrayList<>();
      for (TestAssertion assertion : result.getTestAssertions()) {
        failures.add(
            flavour.getId()
                + " "
                + assertion.getRuleId().getClause()
                + ": "
                + assertion.getMessage()
                + " at "
                + assertion.getLocation().getContext());
      }
      if (failures.isEmpty() && !result.isCompliant()) {
        failures.add(flavour.getId() + " is not met");
      }
      return failures;
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
