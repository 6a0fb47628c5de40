package goniograph.exchange;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A plain-text note, sorted.
 *
 * @param parts its lines by where they belong, in the order of the note
 */
public record Note(Map<Part, List<String>> parts) {

  /** Where a line belongs. */
  public enum Part {
    TITLE,
    WHY,
    DO,
    FEEL,
    EASIER,
    HARDER,
    LANDMARK,
    /** What is said about harm: on a sheet that is the business of statements. */
    CARE,
    /** What is said about how much and how often. */
    DOSE,
    /** Whatever nothing sorts. */
    OTHER
  }

  public Note {
    Map<Part, List<String>> copy = new EnumMap<>(Part.class);
    parts.forEach((part, lines) -> copy.put(part, List.copyOf(lines)));
    parts = copy;
  }

  /** The lines of a part; empty where it has none. */
  public List<String> lines(Part part) {
    return parts.getOrDefault(part, List.of());
  }
}
