package goniograph.language;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds words and phrases in a text, whole words only, whatever their case. */
public final class WordFinder {
  private record Sought(String phrase, List<String> words) {}

  private final Map<String, List<Sought>> sought;
  private final Map<String, List<Sought>> silent;
  private final List<String> prefixes;

  /** A place in a text, from its first character to behind its last. */
  public record Found(int from, int to, String phrase) {}

  private WordFinder(List<String> phrases, List<String> silent, List<String> prefixes) {
    this.sought = sought(phrases);
    this.silent = sought(silent);
    this.prefixes = prefixes;
  }

  /** Finds these phrases. */
  public static WordFinder of(Words words, List<String> phrases) {
    return of(words, phrases, List.of());
  }

  /** Finds these phrases, but not inside the silent ones: {@code right}, not {@code all right}. */
  public static WordFinder of(Words words, List<String> phrases, List<String> silent) {
    return new WordFinder(phrases, silent, words.list("prefixes"));
  }

  /** All places, in order; of phrases that begin at one place the longest. */
  public List<Found> find(String text) {
    List<Token> tokens = Token.of(text);
    List<Found> found = new ArrayList<>();
    for (int i = 0; i < tokens.size(); ) {
      int quiet = longest(silent, tokens, i).map(s -> s.words().size()).orElse(0);
      Optional<Sought> hit = quiet > 0 ? Optional.empty() : longest(sought, tokens, i);
      if (hit.isPresent()) {
        Token last = tokens.get(i + hit.get().words().size() - 1);
        found.add(new Found(tokens.get(i).from(), last.to(), hit.get().phrase()));
      }
      i += Math.max(1, Math.max(quiet, hit.map(s -> s.words().size()).orElse(0)));
    }
    return found;
  }

  /** How many tokens the longest phrase at this token takes; 0 if none begins there. */
  int length(List<Token> tokens, int at) {
    return longest(sought, tokens, at).map(phrase -> phrase.words().size()).orElse(0);
  }

  private Optional<Sought> longest(Map<String, List<Sought>> phrases, List<Token> tokens, int at) {
    return at >= tokens.size()
        ? Optional.empty()
        : beginning(phrases, tokens.get(at).folded())
            .filter(phrase -> stands(phrase.words(), tokens, at))
            .max(Comparator.comparingInt(phrase -> phrase.words().size()));
  }

  /** The phrases whose first word this is, with a prefix of the language or without. */
  private Stream<Sought> beginning(Map<String, List<Sought>> phrases, String word) {
    Stream<Sought> plain = phrases.getOrDefault(word, List.of()).stream();
    return prefixes.isEmpty()
        ? plain
        : Stream.concat(
            plain,
            prefixes.stream()
                .filter(word::startsWith)
                .map(prefix -> word.substring(prefix.length()))
                .flatMap(rest -> phrases.getOrDefault(rest, List.of()).stream()));
  }

  private boolean stands(List<String> words, List<Token> tokens, int at) {
    if (at + words.size() > tokens.size()) {
      return false;
    }
    for (int i = 1; i < words.size(); i++) {
      if (!same(words.get(i), tokens.get(at + i).folded())) {
        return false;
      }
    }
    return true;
  }

  private boolean same(String word, String token) {
    return token.equals(word)
        || (token.endsWith(word)
            && prefixes.contains(token.substring(0, token.length() - word.length())));
  }

  /** The phrases by their first word. */
  private static Map<String, List<Sought>> sought(List<String> phrases) {
    return phrases.stream()
        .map(phrase -> new Sought(phrase, Token.words(phrase)))
        .filter(phrase -> !phrase.words().isEmpty())
        .collect(Collectors.groupingBy(phrase -> phrase.words().get(0)));
  }
}
