package goniograph.matter;

import goniograph.source.SourceFile;
import goniograph.source.Span;

/** A part of a file, addressed by code points as the YAML parser counts them. */
final class Slice {
  private final SourceFile file;
  private final int from;
  private final String text;
  private final int[] chars;

  Slice(SourceFile file, int from, int to) {
    this.file = file;
    this.from = from;
    this.text = file.text().substring(from, to);
    this.chars = new int[text.codePointCount(0, text.length()) + 1];
    for (int point = 1; point < chars.length; point++) {
      chars[point] = text.offsetByCodePoints(chars[point - 1], 1);
    }
  }

  String text() {
    return text;
  }

  /** Index in the slice's text of a code point, kept inside the text. */
  int index(long codePoint) {
    return chars[(int) Math.max(0, Math.min(codePoint, chars.length - 1L))];
  }

  /** Source text between two code points. */
  String cut(long start, long end) {
    return text.substring(index(start), Math.max(index(start), index(end)));
  }

  /** Place between two code points, in the whole file. */
  Span span(long start, long end) {
    return file.span(from + index(start), from + index(end));
  }

  /** Place between two indices of the slice's text, in the whole file. */
  Span spanOfText(int start, int end) {
    return file.span(from + start, from + end);
  }
}
