package goniograph.translation;

/**
 * A note that a piece was translated.
 *
 * @param source digest of the source piece it was made from
 * @param target digest of the piece as the translator left it
 */
public record PieceRecord(String source, String target) {}
