package goniograph.type;

import java.util.List;

/**
 * The smallest piece of shaped text that has a source text of its own: a letter with its marks, a
 * ligature, a syllable whose parts change places.
 *
 * @param text the characters it shows, in reading order, without direction controls
 * @param face the face its glyphs come from
 * @param glyphs its glyphs; none for a blank
 * @param advance how far the next cluster to the right stands away, in font units
 * @param rightToLeft whether its text is read to the left
 */
public record Cluster(
    String text, Face face, List<PlacedGlyph> glyphs, double advance, boolean rightToLeft) {
  public Cluster {
    glyphs = List.copyOf(glyphs);
  }
}
