package goniograph.type;

/**
 * A glyph of a face at its place in a cluster, in font units, y upwards.
 *
 * @param glyph the glyph's number in the font
 * @param x to the right of the cluster's origin
 * @param y above the baseline
 */
public record PlacedGlyph(int glyph, double x, double y) {}
