package goniograph.source;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * One text file as read: its path, its characters, and the map from characters to bytes, lines and
 * columns. Invalid UTF-8 becomes U+FFFD in the text; offsets stay true for valid text.
 */
public final class SourceFile {
  /** Characters between two counts, so that a place deep in a long line is found at once. */
  private static final int BLOCK = 64;

  private final String path;
  private final String text;
  private final int[] lineStarts;
  private final int[] blockBytes;
  private final int[] blockPoints;

  private SourceFile(String path, String text) {
    this.path = path;
    this.text = text;
    int[] starts = new int[16];
    int lines = 0;
    starts[lines++] = 0;
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\n') {
        if (lines == starts.length) {
          starts = Arrays.copyOf(starts, lines * 2);
        }
        starts[lines++] = i + 1;
      }
    }
    this.lineStarts = Arrays.copyOf(starts, lines);
    this.blockBytes = new int[text.length() / BLOCK + 1];
    this.blockPoints = new int[blockBytes.length];
    for (int block = 1; block < blockBytes.length; block++) {
      int from = (block - 1) * BLOCK;
      blockBytes[block] = blockBytes[block - 1] + utf8Length(text, from, from + BLOCK);
      blockPoints[block] = blockPoints[block - 1] + points(text, from, from + BLOCK);
    }
  }

  /** A file from its text. */
  public static SourceFile of(String path, String text) {
    return new SourceFile(path, text);
  }

  /** A file from its bytes, read as UTF-8. */
  public static SourceFile of(String path, byte[] bytes) {
    return new SourceFile(path, new String(bytes, StandardCharsets.UTF_8));
  }

  /** The path relative to the library folder, with {@code /}. */
  public String path() {
    return path;
  }

  /** The whole text. */
  public String text() {
    return text;
  }

  /** The place from character {@code from} to before character {@code to}, both in the text. */
  public Span span(int from, int to) {
    int start = Math.max(0, Math.min(from, text.length()));
    int end = Math.max(start, Math.min(to, text.length()));
    int line = lineAt(start);
    int endLine = lineAt(end);
    return new Span(
        path,
        byteAt(start),
        byteAt(end),
        line + 1,
        columnAt(start, line),
        endLine + 1,
        columnAt(end, endLine));
  }

  /** Character index of a 1-based line and 1-based UTF-16 column, kept inside the text. */
  public int index(int line, int column) {
    int row = Math.max(0, Math.min(line - 1, lineStarts.length - 1));
    return Math.max(0, Math.min(lineStarts[row] + column - 1, text.length()));
  }

  private int lineAt(int index) {
    int found = Arrays.binarySearch(lineStarts, index);
    return found >= 0 ? found : -found - 2;
  }

  private int byteAt(int index) {
    int block = index / BLOCK;
    return blockBytes[block] + utf8Length(text, block * BLOCK, index);
  }

  private int columnAt(int index, int line) {
    return pointsBefore(index) - pointsBefore(lineStarts[line]) + 1;
  }

  private int pointsBefore(int index) {
    int block = index / BLOCK;
    return blockPoints[block] + points(text, block * BLOCK, index);
  }

  /** Bytes in UTF-8; each half of a surrogate pair counts two. */
  private static int utf8Length(String text, int from, int to) {
    int bytes = 0;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      bytes += c < 0x80 ? 1 : c < 0x800 || Character.isSurrogate(c) ? 2 : 3;
    }
    return bytes;
  }

  /** Code points; a surrogate pair counts once, at its first half. */
  private static int points(String text, int from, int to) {
    int points = 0;
    for (int i = from; i < to; i++) {
      points += Character.isLowSurrogate(text.charAt(i)) ? 0 : 1;
    }
    return points;
  }
}
