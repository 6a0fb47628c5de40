package goniograph.register;

/**
 * A piece of a language version with the piece of source text it stands for.
 *
 * @param source digest of the source piece
 * @param target digest of the translated piece
 */
public record PiecePair(String source, String target) {}
