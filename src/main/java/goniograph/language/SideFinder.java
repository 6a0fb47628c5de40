package goniograph.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Finds words for left and right where they name a side: beside a body part, or behind words such
 * as "to the". In languages whose side words mean nothing else every one of them counts.
 */
public final class SideFinder {
  private static final int LONGEST_LEAD = 3;

  /**
   * A side that is named.
   *
   * @param from its first character in the text
   * @param to behind its last character
   * @param left whether it is left
   * @param part what kind of part stands beside it: {@code arm}, {@code leg}, {@code side}, or ""
   */
  public record Found(int from, int to, boolean left, String part) {}

  private final WordFinder left;
  private final WordFinder right;
  private final WordFinder silent;
  private final WordFinder leads;
  private final boolean always;
  private final SortedMap<String, WordFinder> parts = new TreeMap<>();

  private SideFinder(Words words) {
    left = words.finder("left");
    right = words.finder("right");
    silent = words.finder("side.silent");
    leads = words.finder("side.lead");
    always = words.list("side.lead").isEmpty();
    words.below("side.part.").forEach((part, list) -> parts.put(part, WordFinder.of(words, list)));
  }

  /** A finder with the words of a language. */
  public static SideFinder of(Words words) {
    return new SideFinder(words);
  }

  /** All sides that a text names, in order. */
  public List<Found> find(String text) {
    List<Token> tokens = Token.of(text);
    List<Found> found = new ArrayList<>();
    for (int i = 0; i < tokens.size(); ) {
      int quiet = silent.length(tokens, i);
      int length = quiet > 0 ? quiet : Math.max(left.length(tokens, i), right.length(tokens, i));
      if (quiet == 0 && length > 0) {
        side(tokens, i, length).ifPresent(found::add);
      }
      i += Math.max(1, length);
    }
    return List.copyOf(found);
  }

  private Optional<Found> side(List<Token> tokens, int at, int length) {
    String part = part(tokens, at + length).or(() -> part(tokens, at - 1)).orElse("");
    boolean named = always || !part.isEmpty() || led(tokens, at, at + length);
    return named
        ? Optional.of(
            new Found(
                tokens.get(at).from(),
                tokens.get(at + length - 1).to(),
                left.length(tokens, at) > 0,
                part))
        : Optional.empty();
  }

  private Optional<String> part(List<Token> tokens, int at) {
    return at < 0
        ? Optional.empty()
        : parts.entrySet().stream()
            .filter(part -> part.getValue().length(tokens, at) > 0)
            .map(Map.Entry::getKey)
            .findFirst();
  }

  /** "to the right", and "right" or "left" behind the other one: "left, then right". */
  private boolean led(List<Token> tokens, int at, int next) {
    for (int length = 1; length <= Math.min(LONGEST_LEAD, at); length++) {
      if (leads.length(tokens.subList(at - length, at), 0) == length) {
        return true;
      }
    }
    return names(tokens, at - 2)
        || names(tokens, at - 3)
        || names(tokens, next + 1)
        || names(tokens, next + 2);
  }

  private boolean names(List<Token> tokens, int at) {
    return at >= 0
        && at < tokens.size()
        && (left.length(tokens, at) > 0 || right.length(tokens, at) > 0);
  }
}
