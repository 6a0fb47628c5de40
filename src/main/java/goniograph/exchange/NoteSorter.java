package goniograph.exchange;

import goniograph.exchange.Note.Part;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Sorts an English plain-text note into the sections of an exercise: by its headings where it has
 * some, sentence by sentence by cue words where not. Every line ends up somewhere.
 */
public final class NoteSorter {
  private static final Pattern MARKER =
      Pattern.compile("^(?:[-*•–]|\\(?[0-9]{1,2}[.)]|[Ss]tep [0-9]{1,2}[:.)])\\s+");
  private static final Pattern LABEL = Pattern.compile("^([^:.!?]{1,40}):\\s*(.*)$");
  private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?])\\s+");
  private static final Pattern BROKEN = Pattern.compile("[^.!?:]$");
  private static final int TITLE_WORDS = 9;
  private static final List<Part> BY_CUE =
      List.of(Part.CARE, Part.EASIER, Part.HARDER, Part.FEEL, Part.LANDMARK, Part.WHY, Part.DO);
  private static final Properties WORDS = words();

  private final Map<Part, List<String>> parts = new EnumMap<>(Part.class);
  private Optional<Part> under = Optional.empty();

  private NoteSorter() {}

  /** The note, sorted. */
  public static Note sort(String text) {
    NoteSorter sorter = new NoteSorter();
    unwrapped(text).stream().filter(line -> !line.isEmpty()).forEach(sorter::line);
    return new Note(sorter.parts);
  }

  /** The lines, those joined that were broken in the middle of a sentence. */
  private static List<String> unwrapped(String text) {
    List<String> lines = new ArrayList<>();
    for (String line : text.lines().map(String::strip).toList()) {
      String before = lines.isEmpty() ? "" : lines.get(lines.size() - 1);
      boolean goesOn = BROKEN.matcher(before).find() && !MARKER.matcher(line).find();
      if (goesOn && line.matches("[a-z0-9].*")) {
        lines.set(lines.size() - 1, before + " " + line);
      } else {
        lines.add(line);
      }
    }
    return lines;
  }

  private void line(String line) {
    String bare = line.replaceAll("^#+\\s*|\\s*#+$", "").strip();
    boolean listed = MARKER.matcher(bare).find();
    String words = MARKER.matcher(bare).replaceFirst("");
    Matcher label = LABEL.matcher(words);
    Optional<Part> heading = heading(words.replaceAll(":$", ""));
    Optional<Part> labelled = label.matches() ? heading(label.group(1)) : Optional.empty();
    if (heading.isPresent() && !listed) {
      under = heading;
    } else if (labelled.isPresent()) {
      under = labelled;
      text(label.group(2), listed);
    } else if (parts.isEmpty() && under.isEmpty() && titled(words, listed)) {
      put(Part.TITLE, words);
    } else {
      text(words, listed);
    }
  }

  private void text(String words, boolean listed) {
    if (under.filter(part -> part == Part.TITLE).isPresent()) {
      put(Part.TITLE, words);
      under = Optional.empty();
    } else if (listed && under.isEmpty()) {
      put(cue(words).filter(part -> part == Part.CARE).orElse(Part.DO), words);
    } else if (listed || under.filter(part -> part != Part.DO).isPresent()) {
      put(under.orElse(Part.OTHER), words);
    } else {
      SENTENCE
          .splitAsStream(words)
          .forEach(one -> put(under.or(() -> cue(one)).orElse(Part.OTHER), one));
    }
  }

  private void put(Part part, String words) {
    if (!words.isBlank()) {
      parts.computeIfAbsent(part, key -> new ArrayList<>()).add(words.strip());
    }
  }

  private static boolean titled(String words, boolean listed) {
    return !listed && words.split("\\s+").length <= TITLE_WORDS && !words.matches(".*[.!?]$");
  }

  private static Optional<Part> heading(String words) {
    String folded = words.toLowerCase(Locale.ROOT).replaceAll("[^a-z' ]", " ").strip();
    return Arrays.stream(Part.values())
        .filter(part -> list("heading.", part).contains(folded))
        .findFirst();
  }

  /** By a cue anywhere; what to do is told by its first word. */
  private static Optional<Part> cue(String sentence) {
    String folded =
        " " + sentence.toLowerCase(Locale.ROOT).replaceAll("[^a-z']+", " ").strip() + " ";
    return BY_CUE.stream()
        .filter(
            part ->
                list("cue.", part).stream()
                    .map(cue -> " " + cue + " ")
                    .anyMatch(
                        cue -> part == Part.DO ? folded.startsWith(cue) : folded.contains(cue)))
        .findFirst();
  }

  private static List<String> list(String prefix, Part part) {
    String key = prefix + part.name().toLowerCase(Locale.ROOT);
    return List.of(WORDS.getProperty(key, "").split("\\|"));
  }

  private static Properties words() {
    try (Reader in =
        new InputStreamReader(
            Objects.requireNonNull(NoteSorter.class.getResourceAsStream("note-en.properties")),
            StandardCharsets.UTF_8)) {
      Properties words = new Properties();
      words.load(in);
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the words that sort a note", e);
    }
  }
}
