package goniograph.render.pdf;

import goniograph.type.Cluster;
import goniograph.type.Face;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.util.BoundingBox;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.font.PDFont;

/**
 * A font of one document in which every code is one shaped cluster (ISO 32000-1, 9.7: a composite
 * font with the Identity-H encoding). So each code has its exact width and its exact source text,
 * and a viewer needs to know nothing about shaping. Text goes in as private-use characters, one a
 * cluster, made by {@link #code}.
 */
final class ClusterFont extends PDFont {
  /** Plane 15 of Unicode, for private use: U+F0000 and the code. */
  private static final int PRIVATE = 0xF0000;

  private static final int MOST = 0xFFFD;

  private final Face face;
  private final Map<Cluster, Integer> codes = new LinkedHashMap<>();
  private final List<Cluster> clusters = new ArrayList<>();

  ClusterFont(Face face) {
    super(dictionary(face));
    this.face = face;
    setFontDescriptor(FontDictionaries.descriptor(face));
  }

  private static COSDictionary dictionary(Face face) {
    COSDictionary font = new COSDictionary();
    font.setItem(COSName.TYPE, COSName.FONT);
    font.setItem(COSName.SUBTYPE, COSName.TYPE0);
    font.setName(COSName.BASE_FONT, face.postScriptName());
    font.setItem(COSName.ENCODING, COSName.IDENTITY_H);
    return font;
  }

  /** The private-use character that stands for a cluster, the same one for the same cluster. */
  String code(Cluster cluster) {
    Integer code = codes.get(cluster);
    if (code == null) {
      clusters.add(cluster);
      code = clusters.size();
      if (code > MOST) {
        throw new IllegalStateException("more clusters than a font has codes");
      }
      codes.put(cluster, code);
    }
    return Character.toString(PRIVATE + code);
  }

  /** Writes what the document's text needs of the face: glyphs, widths, source text. */
  @Override
  public void subset() throws IOException {
    FontDictionaries.complete(this.dict, face, clusters);
  }

  @Override
  protected byte[] encode(int unicode) {
    int code = unicode - PRIVATE;
    return new byte[] {(byte) (code >> 8), (byte) code};
  }

  @Override
  public int readCode(InputStream in) throws IOException {
    return in.read() << 8 | in.read();
  }

  @Override
  public float getWidthFromFont(int code) {
    return (float) (clusters.get(code - 1).advance() * 1000 / face.unitsPerEm());
  }

  @Override
  public String getName() {
    return dict.getNameAsString(COSName.BASE_FONT);
  }

  @Override
  public BoundingBox getBoundingBox() {
    return new BoundingBox();
  }

  @Override
  @SuppressWarnings("deprecation") // the interface still asks for it
  public float getHeight(int code) {
    return face.ascent() * 1000f / face.unitsPerEm();
  }

  @Override
  public boolean hasExplicitWidth(int code) {
    return true;
  }

  @Override
  protected float getStandard14Width(int code) {
    throw new UnsupportedOperationException("an embedded font is not one of the standard 14");
  }

  @Override
  public boolean isVertical() {
    return false;
  }

  @Override
  public boolean isEmbedded() {
    return true;
  }

  @Override
  public boolean isDamaged() {
    return false;
  }

  /** Every cluster that was given a code is drawn, so there is nothing to choose. */
  @Override
  public void addToSubset(int codePoint) {}

  @Override
  public boolean willBeSubset() {
    return true;
  }
}
