package goniograph.type;

import java.util.List;

/**
 * Text ready to draw.
 *
 * @param clusters from left to right as they stand on the line
 * @param missing characters that could not be shown and have no cluster
 */
public record ShapedText(List<Cluster> clusters, List<MissingGlyph> missing) {
  public ShapedText {
    clusters = List.copyOf(clusters);
    missing = List.copyOf(missing);
  }

  /** Width of the text at one em, in ems. */
  public double width() {
    double width = 0;
    for (Cluster cluster : clusters) {
      width += cluster.advance() / cluster.face().unitsPerEm();
    }
    return width;
  }
}
