package goniograph.exchange;

import goniograph.exchange.Note.Part;
import goniograph.exchange.NoteNumbers.Number;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Puts a sorted note into the blank of an exercise and types no number: each becomes a question
 * beside the empty field it probably belongs to, and its place in the text becomes the slot, or
 * {@code {number}} where the slot is not certain, which the check refuses until somebody decides.
 */
public final class NoteBlank {
  private static final Pattern KEY = Pattern.compile("^( *)([a-z_]+):$");
  private static final String FENCE = "---";
  private static final String OPEN = "{number}";

  private final NoteNumbers numbers = new NoteNumbers();
  private final Map<String, Set<String>> values = new TreeMap<>();
  private final Map<String, Set<String>> questions = new LinkedHashMap<>();
  private final Note note;

  private NoteBlank(Note note) {
    this.note = note;
    note.parts().values().forEach(lines -> lines.forEach(this::ask));
  }

  /** The blank with the note in it. */
  public static String filled(String blank, Note note) {
    NoteBlank filling = new NoteBlank(note);
    List<String> lines = blank.lines().toList();
    int fence = lines.lastIndexOf(FENCE);
    List<String> out = new ArrayList<>(filling.asked(lines.subList(0, fence)));
    out.addAll(filling.left());
    out.add(FENCE);
    lines.subList(fence + 1, lines.size()).forEach(line -> out.addAll(filling.section(line)));
    return String.join("\n", out) + "\n";
  }

  private void ask(String line) {
    for (Number number : numbers.in(line)) {
      values.computeIfAbsent(number.field(), field -> new LinkedHashSet<>()).add(number.value());
      questions
          .computeIfAbsent(number.field(), field -> new LinkedHashSet<>())
          .add("the note says \"" + number.said() + "\": " + number.asked() + "?");
    }
  }

  /** The fields, each with its questions behind it. */
  private List<String> asked(List<String> lines) {
    List<String> out = new ArrayList<>();
    List<String> path = new ArrayList<>();
    for (String line : lines) {
      Matcher key = KEY.matcher(line);
      if (key.matches()) {
        int depth = key.group(1).length() / 2;
        path.subList(Math.min(depth, path.size()), path.size()).clear();
        path.add(key.group(2));
      }
      Set<String> here = key.matches() ? questions.get(String.join(".", path)) : null;
      Set<String> figure = line.startsWith("figure: ") ? questions.get("figure") : null;
      Set<String> all = here == null ? figure : here;
      out.add(all == null ? line : line + "  # " + String.join(" ", all));
    }
    return out;
  }

  /** What no section takes, as comments, so that nothing is lost. */
  private List<String> left() {
    List<String> out = new ArrayList<>();
    left(out, "Of the note, about harm: choose statements that say it", note.lines(Part.CARE));
    left(out, "Of the note, about how much and how often", note.lines(Part.DOSE));
    left(out, "Of the note, not sorted", note.lines(Part.OTHER));
    List<String> titles = note.lines(Part.TITLE);
    left(
        out,
        "Of the note, another title",
        titles.subList(Math.min(1, titles.size()), titles.size()));
    return out;
  }

  private static void left(List<String> out, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      out.add("# " + heading + ":");
      lines.forEach(line -> out.add("#   " + line));
    }
  }

  /** A heading of the text, and what the note has for it. */
  private List<String> section(String line) {
    if (line.strip().equals("#")) {
      return note.lines(Part.TITLE).stream()
          .limit(1)
          .map(title -> "# " + slotted(title))
          .findFirst()
          .map(List::of)
          .orElse(List.of(line));
    }
    List<String> out = new ArrayList<>(List.of(line));
    for (Part part : Part.values()) {
      if (line.equals("## " + part.name().toLowerCase(Locale.ROOT))) {
        out.addAll(body(part));
      }
    }
    return out;
  }

  private List<String> body(Part part) {
    List<String> lines = note.lines(part).stream().map(this::slotted).toList();
    if (lines.isEmpty()) {
      return lines;
    }
    if (part != Part.DO) {
      return List.of(lines.stream().collect(Collectors.joining(" ")));
    }
    List<String> steps = new ArrayList<>();
    lines.forEach(step -> steps.add((steps.size() + 1) + ". " + step));
    return steps;
  }

  /** A line of the note as text of an entry: without numbers, and without marks of its own. */
  private String slotted(String line) {
    String text =
        line.replaceAll("[*_`]", "").replaceAll("[{\\[<]", "(").replaceAll("[}\\]>]", ")");
    StringBuilder out = new StringBuilder();
    int done = 0;
    for (Number number : numbers.in(text)) {
      out.append(text, done, number.from()).append(slot(number));
      done = number.to();
    }
    return out.append(text.substring(done)).toString();
  }

  /** Two different numbers for one field leave both places open. */
  private String slot(Number number) {
    boolean one = values.getOrDefault(number.field(), Set.of()).size() == 1;
    return one ? number.slot().map(name -> "{" + name + "}").orElse(OPEN) : OPEN;
  }
}
