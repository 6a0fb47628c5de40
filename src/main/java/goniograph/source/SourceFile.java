package goniograph.source;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * One text file as read: its path, its characters, and the map from characters to bytes, lines and
 * columns. Invalid UTF-8 becomes U+FFFD in the text; offsets stay true for valid text.
 */
public final class SourceFile {
  private final String path;
  private final String text;
  private final int[] lineStarts;
  private final int[] lineBytes;

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
    this.lineBytes = new int[lines];
    for (int line = 1; line < lines; line++) {
      lineBytes[line] =
          lineBytes[line - 1] + utf8Length(text, lineStarts[line - 1], lineStarts[line]);
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
        byteAt(start, line),
        byteAt(end, endLine),
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

  private int byteAt(int index, int line) {
    return lineBytes[line] + utf8Length(text, lineStarts[line], index);
  }

  private int columnAt(int index, int line) {
    return text.codePointCount(lineStarts[line], index) + 1;
  }

  private static int utf8Length(String text, int from, int to) {
    return text.substring(from, to).getBytes(StandardCharsets.UTF_8).length;
  }
}
