package goniograph.pose;

import goniograph.matter.Node;
import goniograph.source.Span;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a scalar with its exact place.
 *
 * @param text the piece, without blanks at its ends
 * @param at where it stands
 */
record Phrase(String text, Span at) {

  /** A whole scalar. */
  static Phrase of(Node.Scalar scalar) {
    Span at = scalar.at();
    boolean exact =
        at.line() == at.endLine()
            && bytes(scalar.raw()) == at.end() - at.start() - (scalar.quoted() ? 2 : 0);
    Span inner = scalar.quoted() && exact ? cut(at, 1, 1, at.end() - at.start() - 2) : at;
    return new Phrase(scalar.raw(), inner).trimmed();
  }

  /** The pieces between commas. */
  List<Phrase> clauses() {
    List<Phrase> all = new ArrayList<>();
    int from = 0;
    for (int comma = text.indexOf(','); comma >= 0; comma = text.indexOf(',', from)) {
      all.add(part(from, comma));
      from = comma + 1;
    }
    all.add(part(from, text.length()));
    return all;
  }

  /** The piece from one character to before another, without blanks at its ends. */
  Phrase part(int from, int to) {
    String before = text.substring(0, from);
    String inside = text.substring(from, to);
    boolean exact = at.line() == at.endLine() && bytes(text) == at.end() - at.start();
    Span span = exact ? cut(at, bytes(before), points(before), bytes(inside)) : at;
    return new Phrase(inside, exact ? widened(span, inside) : span).trimmed();
  }

  private Phrase trimmed() {
    String stripped = text.strip();
    if (stripped.equals(text)) {
      return this;
    }
    int lead = text.indexOf(stripped);
    return part(lead, lead + stripped.length());
  }

  private static Span widened(Span span, String inside) {
    return new Span(
        span.file(),
        span.start(),
        span.end(),
        span.line(),
        span.column(),
        span.line(),
        span.column() + points(inside));
  }

  private static Span cut(Span at, int bytes, int points, int length) {
    int start = at.start() + bytes;
    int column = at.column() + points;
    return new Span(
        at.file(), start, start + length, at.line(), column, at.line(), column + length);
  }

  private static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }

  private static int points(String text) {
    return text.codePointCount(0, text.length());
  }
}
