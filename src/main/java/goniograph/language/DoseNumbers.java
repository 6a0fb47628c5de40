package goniograph.language;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Finds numbers of a dose typed into a text: digits or number words beside a dose noun, a unit, ×
 * or %, or in a range. Silent are scores ("3 out of 10"), numbers of steps and drawings, slots in
 * braces, and the language's own silent phrases.
 */
public final class DoseNumbers {
  private static final int MOST_FILLERS = 2;

  /** What gives a number away. */
  public enum Cue {
    /** A noun or unit behind it: {@code 8 times}, {@code 10 s}, {@code 50 %}. */
    NOUN,
    /** A verb before it: {@code count to 10}. */
    LEAD,
    /** A word that is number and noun in one: {@code twice}. */
    WHOLE,
    /** A multiplication sign beside it. */
    TIMES,
    /** A range: {@code 5 to 10}. */
    RANGE
  }

  /**
   * A number found.
   *
   * @param from its first character in the text
   * @param to behind its last character; a range is found as a whole, a noun is not part of it
   * @param end behind the noun that it stands beside; where none does, {@code to}
   * @param value the number
   * @param upTo the upper end of a range
   * @param cue what gave it away
   * @param counts what it counts: a UCUM code, {@code reps}, {@code sets}, {@code sessions}, {@code
   *     percent}, {@code other}, or "" where nothing says
   */
  public record Found(
      int from,
      int to,
      int end,
      BigDecimal value,
      Optional<BigDecimal> upTo,
      Cue cue,
      String counts) {}

  /** A number or range among the tokens, from one to before another. */
  private record Amount(
      int first, int next, BigDecimal value, Optional<BigDecimal> upTo, boolean digits) {}

  /** What gives a number away, and how many tokens that and the number reach. */
  private record Clue(Cue cue, String counts, int next) {}

  private final NumberWords numbers;
  private final SortedMap<String, WordFinder> nouns;
  private final SortedMap<String, WordFinder> leads;
  private final SortedMap<String, WordFinder> wholes;
  private final WordFinder fillers;
  private final WordFinder ranges;
  private final WordFinder times;
  private final WordFinder labels;
  private final WordFinder scales;
  private final WordFinder silent;

  private DoseNumbers(Words words) {
    numbers = new NumberWords(words);
    nouns = words.finders("noun.");
    leads = words.finders("lead.");
    wholes = words.finders("whole.");
    fillers = words.finder("filler");
    ranges = words.finder("range");
    times = words.finder("times");
    labels = words.finder("label");
    scales = words.finder("scale");
    silent = words.finder("silent");
  }

  /** A finder with the words of a language. */
  public static DoseNumbers of(Words words) {
    return new DoseNumbers(words);
  }

  /** All dose numbers of a text, in order. */
  public List<Found> find(String text) {
    List<Token> tokens = Token.of(text);
    List<Found> found = new ArrayList<>();
    for (int i = 0; i < tokens.size(); ) {
      int quiet = quiet(tokens, i);
      i = quiet > 0 ? i + quiet : visit(tokens, i, found);
    }
    return found;
  }

  /** Looks at one token; returns the next to look at. */
  private int visit(List<Token> tokens, int at, List<Found> found) {
    for (Map.Entry<String, WordFinder> whole : wholes.entrySet()) {
      int length = whole.getValue().length(tokens, at);
      if (length > 0) {
        found.add(whole(tokens.get(at), tokens.get(at + length - 1), whole.getKey()));
        return at + length;
      }
    }
    Optional<Amount> amount = amount(tokens, at);
    amount
        .flatMap(number -> clue(tokens, number))
        .ifPresent(clue -> found.add(found(tokens, amount.get(), clue)));
    return amount.map(Amount::next).orElse(at + 1);
  }

  private static Found whole(Token first, Token last, String key) {
    int dot = key.indexOf('.');
    BigDecimal value = new BigDecimal(key.substring(0, dot));
    return new Found(
        first.from(),
        last.to(),
        last.to(),
        value,
        Optional.empty(),
        Cue.WHOLE,
        key.substring(dot + 1));
  }

  private static Found found(List<Token> tokens, Amount amount, Clue clue) {
    return new Found(
        tokens.get(amount.first()).from(),
        tokens.get(amount.next() - 1).to(),
        tokens.get(clue.next() - 1).to(),
        amount.value(),
        amount.upTo(),
        clue.cue(),
        clue.counts());
  }

  /** How many tokens to pass over: a silent phrase, a label with its numbers, a score, a date. */
  private int quiet(List<Token> tokens, int at) {
    int phrase = silent.length(tokens, at);
    if (phrase > 0) {
      return phrase;
    }
    int label = labels.length(tokens, at);
    if (label > 0) {
      return label + amount(tokens, at + label).map(n -> n.next() - n.first()).orElse(0);
    }
    return amount(tokens, at).map(number -> quietAfter(tokens, number)).orElse(0);
  }

  private int quietAfter(List<Token> tokens, Amount number) {
    int scale = scales.length(tokens, number.next());
    if (scale > 0) {
      return number.next() + scale - number.first();
    }
    int joint = ranges.length(tokens, number.next());
    boolean date =
        number.upTo().isPresent() && joint > 0 && amount(tokens, number.next() + joint).isPresent();
    return date ? number.next() + joint + 1 - number.first() : 0;
  }

  private Optional<Amount> amount(List<Token> tokens, int at) {
    return numbers.at(tokens, at).map(low -> amount(tokens, at, low));
  }

  private Amount amount(List<Token> tokens, int at, NumberWords.Read low) {
    int next = at + low.length();
    int joint = ranges.length(tokens, next);
    return (joint > 0 ? numbers.at(tokens, next + joint) : Optional.<NumberWords.Read>empty())
        .map(
            high ->
                new Amount(
                    at,
                    next + joint + high.length(),
                    low.value(),
                    Optional.of(high.value()),
                    low.inDigits()))
        .orElseGet(() -> new Amount(at, next, low.value(), Optional.empty(), low.inDigits()));
  }

  private Optional<Clue> clue(List<Token> tokens, Amount number) {
    return noun(tokens, number.next())
        .or(() -> multiplied(tokens, number))
        .or(() -> lead(tokens, number))
        .or(() -> number.upTo().map(high -> new Clue(Cue.RANGE, "", number.next())));
  }

  private Optional<Clue> noun(List<Token> tokens, int next) {
    int at = next < tokens.size() && tokens.get(next).folded().equals("-") ? next + 1 : next;
    for (int fillersLeft = MOST_FILLERS; ; fillersLeft--) {
      Optional<Clue> noun = noun(tokens, at, nouns);
      int filler = fillers.length(tokens, at);
      if (noun.isPresent() || filler == 0 || fillersLeft == 0) {
        return noun;
      }
      at += filler;
    }
  }

  private Optional<Clue> multiplied(List<Token> tokens, Amount number) {
    boolean before = number.first() > 0 && times.length(tokens, number.first() - 1) > 0;
    return before || times.length(tokens, number.next()) > 0
        ? Optional.of(new Clue(Cue.TIMES, "", number.next()))
        : Optional.empty();
  }

  /** A lead of one word counts before digits only: "hold 10", but "hold one hand". */
  private Optional<Clue> lead(List<Token> tokens, Amount number) {
    for (int length = 1; length <= number.first() && length <= 3; length++) {
      List<Token> before = tokens.subList(number.first() - length, number.first());
      for (Map.Entry<String, WordFinder> lead : leads.entrySet()) {
        boolean whole = lead.getValue().length(before, 0) == length;
        if (whole && (number.digits() || length > 1)) {
          return Optional.of(new Clue(Cue.LEAD, lead.getKey(), number.next()));
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Clue> noun(
      List<Token> tokens, int at, SortedMap<String, WordFinder> nouns) {
    return nouns.entrySet().stream()
        .filter(entry -> entry.getValue().length(tokens, at) > 0)
        .map(e -> new Clue(Cue.NOUN, e.getKey(), at + e.getValue().length(tokens, at)))
        .findFirst();
  }
}
