package goniograph.check.rules;

import goniograph.matter.Piece;
import goniograph.source.SourceFile;
import goniograph.source.Span;

/** Places made from places. */
final class Places {
  private Places() {}

  /** The empty place where another begins. */
  static Span start(Span at) {
    return new Span(
        at.file(), at.start(), at.start(), at.line(), at.column(), at.line(), at.column());
  }

  /** A part of a piece, from character to character of its source text. */
  static Span within(SourceFile file, Piece piece, int from, int to) {
    int line = file.index(piece.at().line(), 1);
    int start = file.text().offsetByCodePoints(line, piece.at().column() - 1);
    return file.span(start + from, start + to);
  }
}
