package goniograph.matter;

import goniograph.source.Span;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
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
        .forEach(
            found ->
                slots.add(new Inline.Slot(found.group(1), part(text, found.start(), found.end()))));
    return List.copyOf(slots);
  }

  /**
   * The place of a part of a scalar, from character to character of its value; behind an escape or
   * over several lines the place of the whole.
   */
  public static Span part(Located<String> text, int from, int to) {
    Span all = text.at();
    int quotes = all.end() - all.start() - bytes(text.value());
    if (all.line() != all.endLine() || (quotes != 0 && quotes != 2)) {
      return all;
    }
    String before = text.value().substring(0, from);
    String part = text.value().substring(from, to);
    int start = all.start() + quotes / 2 + bytes(before);
    int column = all.column() + quotes / 2 + points(before);
    return new Span(
        all.file(),
        start,
        start + bytes(part),
        all.line(),
        column,
        all.line(),
        column + points(part));
  }

  private static int bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8).length;
  }

  private static int points(String text) {
    return text.codePointCount(0, text.length());
  }
}
