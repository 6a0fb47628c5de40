package goniograph.type;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.TextAttribute;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One weight of one family. Lengths are in font units ({@link #unitsPerEm()} to the em), y upwards
 * unless said otherwise.
 */
public final class Face {
  /** Unhinted outlines and fractional advances: the only setting whose numbers fit paper. */
  static final FontRenderContext PAPER = new FontRenderContext(null, true, true);

  private final Family family;
  private final Weight weight;
  private final Sfnt sfnt;
  private final Font font;
  private final Map<String, Map<Integer, Integer>> localForms = new ConcurrentHashMap<>();

  private Face(Family family, Weight weight, byte[] file) throws IOException, FontFormatException {
    this.family = family;
    this.weight = weight;
    sfnt = new Sfnt(file);
    font =
        Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(file))
            .deriveFont((float) sfnt.unitsPerEm())
            .deriveFont(
                Map.of(
                    TextAttribute.KERNING, TextAttribute.KERNING_ON,
                    TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON));
  }

  static Face load(Family family, Weight weight) {
    String name = "fonts/" + family.fileName() + "_" + weight.fileName() + ".ttf";
    try (InputStream in = Face.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the font " + name + " is not on the class path");
      }
      return new Face(family, weight, in.readAllBytes());
    } catch (IOException | FontFormatException e) {
      throw new IllegalStateException("the font " + name + " cannot be read", e);
    }
  }

  public Family family() {
    return family;
  }

  public Weight weight() {
    return weight;
  }

  /** The tables of the font file. */
  public Sfnt sfnt() {
    return sfnt;
  }

  /** Font units to the em. */
  public int unitsPerEm() {
    return sfnt.unitsPerEm();
  }

  /** Height of the face above the baseline, as browsers take it ({@code hhea} ascender). */
  public int ascent() {
    return sfnt.signed("hhea", 4);
  }

  /** Depth of the face below the baseline, positive ({@code hhea} descender). */
  public int descent() {
    return -sfnt.signed("hhea", 6);
  }

  /** Height of flat capitals above the baseline ({@code OS/2} version 2 or later). */
  public int capHeight() {
    return sfnt.signed("OS/2", 88);
  }

  /** Depth of an underline's upper edge below the baseline, positive. */
  public int underlineDepth() {
    return -sfnt.signed("post", 8);
  }

  /** Thickness of an underline. */
  public int underlineThickness() {
    return sfnt.signed("post", 10);
  }

  /** Name that stands for the face in a document, as its foundry writes it. */
  public String postScriptName() {
    return font.getPSName();
  }

  /** True when the face has a glyph for the character, or when the character has none anywhere. */
  public boolean shows(int codePoint) {
    return Characters.isInvisible(codePoint) || font.canDisplay(codePoint);
  }

  /** Glyphs that a language wants changed, and what stands for them. */
  Map<Integer, Integer> localForms(String language) {
    return localForms.computeIfAbsent(language, l -> LocalForms.of(sfnt, l));
  }

  /** The Java font at one unit a font unit, with kerning and ligatures. */
  Font font() {
    return font;
  }

  @Override
  public String toString() {
    return family.cssName() + " " + weight;
  }
}
