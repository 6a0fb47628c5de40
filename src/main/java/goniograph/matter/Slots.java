package goniograph.matter;

import goniograph.source.Span;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Finds {@code {slots}} in text. */
public final class Slots {
  static final Pattern SLOT = Pattern.compile("\\{([^{}]*)}");

  private Slots() {}

  /**
   * The slots of a scalar. Their places are exact where the scalar stands on one line as typed;
   * behind an escape they are the place of the whole scalar.
   */
  public static List<Inline.Slot> in(Located<String> text) {
    List<Inline.Slot> slots = new ArrayList<>();
    SLOT.matcher(text.value())
        .results()
        .forEach(found -> slots.add(new Inline.Slot(found.group(1), at(text, found))));
    return List.copyOf(slots);
  }

  private static Span at(Located<String> text, MatchResult found) {
    Span all = text.at();
    int quotes = all.end() - all.start() - bytes(text.value());
    if (all.line() != all.endLine() || (quotes != 0 && quotes != 2)) {
      return all;
    }
    String before = text.value().substring(0, found.start());
    int start = all.start() + quotes / 2 + bytes(before);
    int column = all.column() + quotes / 2 + points(before);
    return new Span(
        all.file(),
        start,
        start + bytes(found.group()),
        all.line(),
        column,
        all.line(),
        column + points(found.group()));
  }

  private static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }

  private static int points(String text) {
    return text.codePointCount(0, text.length());
  }
}
