package goniograph.render.pdf;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/**
 * Title, language, dates, identifier and conformance claims of a document: all from its {@link
 * PdfFacts}, none from the clock (ISO 19005-2, 6.6; ISO 14289-1, 5 and 7.1).
 */
final class DocumentFacts {
  private static final String PRODUCER = "Goniograph";

  /** The colour profile all colours are meant in, as the JDK carries it. */
  static final byte[] SRGB = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();

  private DocumentFacts() {}

  static void write(PDDocument document, PdfFacts facts) throws IOException {
    Calendar date = GregorianCalendar.from(facts.date().atStartOfDay(ZoneOffset.UTC));
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(facts.title());
    information.setProducer(PRODUCER);
    information.setCreationDate(date);
    information.setModificationDate(date);
    document.setDocumentInformation(information);
    document.getDocumentCatalog().setLanguage(facts.language());
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(xmp(facts).getBytes(StandardCharsets.UTF_8));
    document.getDocumentCatalog().setMetadata(metadata);
    document.setDocumentId(Long.parseUnsignedLong(facts.digest().substring(0, 16), 16));
  }

  private static String xmp(PdfFacts facts) {
    String date = facts.date() + "T00:00:00Z";
    return """
        <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
        <x:xmpmeta xmlns:x="adobe:ns:meta/">
        <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
        <rdf:Description rdf:about=""
          xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/"
          xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"
          xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
          xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
          xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
          xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
        <dc:format>application/pdf</dc:format>
        <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1$s</rdf:li></rdf:Alt></dc:title>
        <dc:language><rdf:Bag><rdf:li>%2$s</rdf:li></rdf:Bag></dc:language>
        <xmp:CreateDate>%3$s</xmp:CreateDate>
        <xmp:ModifyDate>%3$s</xmp:ModifyDate>
        <pdf:Producer>%4$s</pdf:Producer>
        <pdfaid:part>2</pdfaid:part>
        <pdfaid:conformance>A</pdfaid:conformance>
        <pdfuaid:part>1</pdfuaid:part>
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
          <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
          <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
          <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
          <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>part</pdfaProperty:name>
            <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>Part of ISO 14289</pdfaProperty:description>
          </rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>
        </rdf:RDF>
        </x:xmpmeta>
        <?xpacket end="w"?>
        """
        .formatted(escaped(facts.title()), escaped(facts.language()), date, PRODUCER);
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
