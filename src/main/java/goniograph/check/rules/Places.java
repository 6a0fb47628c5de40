package goniograph.check.rules;

import goniograph.source.Span;

/** Places made from places. */
final class Places {
  private Places() {}

  /** The empty place where another begins. */
  static Span start(Span at) {
    return new Span(
        at.file(), at.start(), at.start(), at.line(), at.column(), at.line(), at.column());
  }
}
