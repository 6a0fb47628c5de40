package goniograph.matter;

import goniograph.finding.Finding;
import goniograph.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import tools.jackson.core.JacksonException;

/** What can be wrong with the spelling of a YAML text, in words for an author. */
final class YamlFindings {
  private static final String UNREADABLE =
      "Nothing behind this place can be read, so no sheet can be made from it.";

  private final Slice slice;
  private final List<Finding> findings = new ArrayList<>();
  private boolean whole = true;

  YamlFindings(Slice slice) {
    this.slice = slice;
  }

  List<Finding> all() {
    return List.copyOf(findings);
  }

  /** Whether no fault has ended the reading. */
  boolean whole() {
    return whole;
  }

  /**
   * Looks for characters that YAML forbids, and for those that show that the bytes were not UTF-8.
   */
  void characters() {
    String text = slice.text();
    int lost = text.indexOf('\uFFFD');
    if (lost >= 0) {
      findings.add(Encoding.finding(slice.spanOfText(lost, lost + 1)));
    }
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      if (!StreamReader.isPrintable(text.codePointAt(i))) {
        forbidden(i, text.codePointAt(i));
        return;
      }
    }
  }

  private void forbidden(int at, int character) {
    whole = false;
    error(
        "yaml-character",
        slice.spanOfText(at, at + 1),
        String.format(Locale.ROOT, "The character U+%04X is not allowed.", character),
        "It is invisible and would be lost or printed as a box. " + UNREADABLE,
        "Delete the character and type the place again.");
  }

  void decoration(char mark, Span at, String typed) {
    switch (mark) {
      case '&' -> alias(at, "The anchor " + typed + " is not allowed.", "Remove " + typed + ".");
      case '*' ->
          alias(
              at,
              "The alias " + typed + " is not allowed.",
              "Write the value itself; text that begins with * goes in quotes: \"*\".");
      default ->
          error(
              "yaml-tag",
              at,
              "The tag " + typed + " is not allowed.",
              "A tag changes how a value is read; every field here has its one kind of value.",
              "Remove "
                  + typed
                  + "; text that begins with ! goes in quotes, for instance \"! mark\".");
    }
  }

  private void alias(Span at, String what, String mend) {
    error(
        "yaml-alias",
        at,
        what,
        "A value that is copied from elsewhere cannot be checked or signed where it is read.",
        mend);
  }

  void truthWord(String typed, Span at) {
    String lower = typed.toLowerCase(Locale.ROOT);
    String truth = List.of("yes", "on", "y").contains(lower) ? "true" : "false";
    error(
        "yaml-yes-no",
        at,
        "The bare word " + typed + " is not allowed as a value.",
        "Some readers take it for true or false and others for text.",
        "Write one of the words of this field; "
            + truth
            + " where it is true or false; in quotes if it is text: \""
            + typed
            + "\".");
  }

  void twice(Node.Field again, Node.Field first) {
    error(
        "yaml-duplicate-key",
        again.keyAt(),
        "The key "
            + again.key()
            + " stands twice; the first is on line "
            + first.keyAt().line()
            + ".",
        "Only one of the two values can be meant, and nobody can tell which.",
        "Keep one of the two lines.");
  }

  /**
   * The one finding about the fault that ended the reading.
   *
   * @param reached code point where the last token begins
   */
  void fault(JacksonException fault, long reached) {
    whole = false;
    if (fault.getCause() instanceof MarkedYamlEngineException marked) {
      marked(marked);
    } else {
      unread(fault, reached);
    }
  }

  private void unread(JacksonException fault, long at) {
    boolean key = fault.getOriginalMessage().startsWith("Expected a property name");
    error(
        "yaml-syntax",
        slice.span(at, at + 1),
        key ? "A list, map or alias stands where a key is wanted." : "The text nests too deeply.",
        UNREADABLE,
        key ? "Write a word and a colon, for instance \"sets: 2\"." : "Take out brackets.");
  }

  private void marked(MarkedYamlEngineException fault) {
    long problem = index(fault.getProblemMark()).orElse(0L);
    long context = index(fault.getContextMark()).orElse(problem);
    String whileDoing = fault.getContext() == null ? "" : fault.getContext();
    String words = fault.getProblem() == null ? "" : fault.getProblem();
    if (words.contains("TAB")) {
      tab(problem);
    } else if (whileDoing.contains("quoted scalar")) {
      unterminated(context, "This text is opened with a quotation mark and never closed.", "\"");
    } else if (whileDoing.contains("flow sequence")) {
      unterminated(context, "This list is opened with [ and not closed before the next key.", "]");
    } else if (whileDoing.contains("flow mapping")) {
      unterminated(context, "This map is opened with { and not closed before the next key.", "}");
    } else {
      syntax(problem, words);
    }
  }

  private static Optional<Long> index(Optional<Mark> mark) {
    return mark.map(m -> (long) m.getIndex());
  }

  private void tab(long at) {
    error(
        "yaml-tab",
        slice.span(at, at + 1),
        "A tab stands where only spaces are allowed.",
        "A tab has no fixed width, so nobody can tell which line belongs to which. " + UNREADABLE,
        "Replace the tab by two spaces for each level.");
  }

  private void unterminated(long at, String what, String close) {
    String quote = close.equals("\"") ? slice.cut(at, at + 1) : close;
    error(
        "yaml-unterminated",
        slice.span(at, at + 1),
        what,
        UNREADABLE,
        "Put the closing " + quote + " where it ends.");
  }

  private void syntax(long at, String problem) {
    boolean colon = problem.startsWith("mapping values are not allowed");
    boolean odd = problem.contains("cannot start any token");
    String found = slice.cut(at, at + 1);
    error(
        "yaml-syntax",
        slice.span(at, at + 1),
        colon
            ? "A second colon stands in this line, or the line is set in too far."
            : odd ? "A value cannot begin with " + found + "." : "This is not YAML: " + problem,
        UNREADABLE,
        colon
            ? "Set keys of one level in by the same number of spaces; put text with a colon in"
                + " quotes."
            : odd
                ? "Put the value in quotes: \"" + found + "…\"."
                : "Write one \"key: value\" a line, or list items that all begin with \"- \".");
  }

  private void error(String rule, Span at, String what, String why, String mend) {
    findings.add(Finding.error(rule, at, what, why, mend));
  }
}
