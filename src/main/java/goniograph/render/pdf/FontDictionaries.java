package goniograph.render.pdf;

import goniograph.source.Digest;
import goniograph.type.Cluster;
import goniograph.type.Face;
import goniograph.type.Sfnt;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/** The dictionaries of a cluster font (ISO 32000-1, 9.7.4, 9.8 and 9.10.3). */
final class FontDictionaries {
  private static final COSName CID_FONT = COSName.getPDFName("CIDFontType2");

  private FontDictionaries() {}

  /** A descriptor with all but the font's program. Lengths in thousandths of an em. */
  static PDFontDescriptor descriptor(Face face) {
    Sfnt sfnt = face.sfnt();
    float unit = 1000f / face.unitsPerEm();
    COSDictionary dictionary = new COSDictionary();
    dictionary.setItem(COSName.TYPE, COSName.FONT_DESC);
    PDFontDescriptor descriptor = new PDFontDescriptor(dictionary);
    descriptor.setFontName(face.postScriptName());
    descriptor.setSymbolic(true);
    descriptor.setItalicAngle(0);
    descriptor.setAscent(face.ascent() * unit);
    descriptor.setDescent(-face.descent() * unit);
    descriptor.setCapHeight(face.capHeight() * unit);
    descriptor.setStemV(face.weight() == goniograph.type.Weight.BOLD ? 140 : 80);
    PDRectangle box = new PDRectangle();
    box.setLowerLeftX(sfnt.signed("head", 36) * unit);
    box.setLowerLeftY(sfnt.signed("head", 38) * unit);
    box.setUpperRightX(sfnt.signed("head", 40) * unit);
    box.setUpperRightY(sfnt.signed("head", 42) * unit);
    descriptor.setFontBoundingBox(box);
    return descriptor;
  }

  /** Fills a font's dictionary for the clusters, whose codes are 1, 2, 3 and so on. */
  static void complete(COSDictionary font, Face face, List<Cluster> clusters) throws IOException {
    byte[] program = new FontProgram(face, clusters).bytes();
    String name = tag(program) + "+" + face.postScriptName();
    font.setName(COSName.BASE_FONT, name);
    font.setItem(COSName.TO_UNICODE, stream(ToUnicode.of(clusters)));
    COSArray descendants = new COSArray();
    descendants.add(descendant(face, name, clusters, program));
    font.setItem(COSName.DESCENDANT_FONTS, descendants);
  }

  private static COSDictionary descendant(
      Face face, String name, List<Cluster> clusters, byte[] program) throws IOException {
    PDFontDescriptor descriptor = descriptor(face);
    descriptor.setFontName(name);
    COSStream file = stream(program);
    file.setInt(COSName.LENGTH1, program.length);
    descriptor.getCOSObject().setItem(COSName.FONT_FILE2, file);
    COSDictionary cidFont = new COSDictionary();
    cidFont.setItem(COSName.TYPE, COSName.FONT);
    cidFont.setItem(COSName.SUBTYPE, CID_FONT);
    cidFont.setName(COSName.BASE_FONT, name);
    cidFont.setItem(COSName.CIDSYSTEMINFO, identity());
    cidFont.setItem(COSName.FONT_DESC, descriptor.getCOSObject());
    cidFont.setItem(COSName.W, widths(face, clusters));
    cidFont.setItem(COSName.CID_TO_GID_MAP, COSName.IDENTITY);
    return cidFont;
  }

  private static COSDictionary identity() {
    COSDictionary info = new COSDictionary();
    info.setString(COSName.REGISTRY, "Adobe");
    info.setString(COSName.ORDERING, "Identity");
    info.setInt(COSName.SUPPLEMENT, 0);
    return info;
  }

  private static COSArray widths(Face face, List<Cluster> clusters) {
    COSArray row = new COSArray();
    for (Cluster cluster : clusters) {
      row.add(new COSFloat((float) (cluster.advance() * 1000 / face.unitsPerEm())));
    }
    COSArray widths = new COSArray();
    widths.add(COSInteger.ONE);
    widths.add(row);
    return widths;
  }

  private static COSStream stream(byte[] bytes) throws IOException {
    COSStream stream = new COSStream();
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(bytes);
    }
    return stream;
  }

  /** Six capitals that mark a subset, taken from what is in it. */
  private static String tag(byte[] program) {
    String digest = Digest.of(program);
    StringBuilder tag = new StringBuilder();
    for (int i = 0; i < 6; i++) {
      tag.append((char) ('A' + Integer.parseInt(digest.substring(2 * i, 2 * i + 2), 16) % 26));
    }
    return tag.toString();
  }
}
