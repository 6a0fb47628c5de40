package goniograph.matter;

import com.vladsch.flexmark.util.sequence.BasedSequence;
import goniograph.source.SourceFile;
import goniograph.source.Span;

/** The text of a file from some character on, and the places of the whole file. */
final class TextPlaces {
  private final SourceFile file;
  private final int from;
  private final String text;

  TextPlaces(SourceFile file, int from) {
    this.file = file;
    this.from = from;
    this.text = file.text().substring(from);
  }

  String text() {
    return text;
  }

  String cut(int start, int end) {
    return text.substring(start, Math.max(start, end));
  }

  Span span(int start, int end) {
    return file.span(from + start, from + end);
  }

  Span span(BasedSequence part) {
    return span(part.getStartOffset(), part.getEndOffset());
  }

  Span all() {
    return span(0, text.length());
  }
}
