package goniograph.source;

/**
 * A place in a file.
 *
 * @param file the path relative to the library folder, with {@code /}
 * @param start byte offset of the first byte, counted from byte 0 of the file
 * @param end byte offset behind the last byte; equal to {@code start} for an empty place
 * @param line 1-based line of the start
 * @param column 1-based column of the start, in code points
 * @param endLine 1-based line of the end
 * @param endColumn 1-based column behind the last code point
 */
public record Span(
    String file, int start, int end, int line, int column, int endLine, int endColumn) {

  /** The place of a whole file that cannot be pointed into, for instance because it is missing. */
  public static Span of(String file) {
    return new Span(file, 0, 0, 1, 1, 1, 1);
  }

  /** From the start of this place to the end of {@code last}, which lies in the same file. */
  public Span to(Span last) {
    return new Span(file, start, last.end, line, column, last.endLine, last.endColumn);
  }
}
