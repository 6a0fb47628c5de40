package goniograph.matter;

import goniograph.finding.MendGrade;
import goniograph.finding.Nearest;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The kinds of values that every file has. */
public final class Spellings {
  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern INTEGER = Pattern.compile("0|-?[1-9][0-9]{0,8}");
  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private Spellings() {}

  /** Any text. */
  public static final Spelling<String> TEXT = (raw, refusal) -> Optional.of(raw);

  /** A name in lower-case letters, digits and hyphens. */
  public static final Spelling<String> ID_WORD =
      shaped(new Shape.Text(ID.pattern()), Spellings::id);

  /** {@code true} or {@code false}. */
  public static final Spelling<Boolean> TRUTH =
      shaped(
          new Shape.Truth(),
          (raw, refusal) -> word(raw, Map.of("true", true, "false", false), refusal));

  /** A day of the calendar, as in ISO 8601. */
  public static final Spelling<LocalDate> DAY = shaped(new Shape.Day(), Spellings::date);

  /** A whole number from {@code min} to {@code max}, both allowed. */
  public static Spelling<Integer> integer(int min, int max) {
    return shaped(new Shape.Whole(min, max), (raw, refusal) -> integer(raw, min, max, refusal));
  }

  private static Optional<Integer> integer(String raw, int min, int max, Spelling.Refusal refusal) {
    if (!INTEGER.matcher(raw).matches()) {
      refusal.because(
          "field-integer",
          "`" + raw + "` is not a whole number.",
          "Write digits alone, for instance `" + Math.max(min, Math.min(max, 3)) + "`.");
      return Optional.empty();
    }
    int value = Integer.parseInt(raw);
    if (value < min || value > max) {
      refusal.because(
          "field-integer",
          raw + " is outside " + min + " to " + max + ".",
          "Write a number from " + min + " to " + max + ".");
      return Optional.empty();
    }
    return Optional.of(value);
  }

  /** One of these words. */
  public static <T> Spelling<T> oneOf(Map<String, T> words) {
    return shaped(
        new Shape.Words(List.copyOf(words.keySet())), (raw, refusal) -> word(raw, words, refusal));
  }

  /** One of these words, as itself. */
  public static Spelling<String> oneOf(Collection<String> words) {
    Map<String, String> same = new LinkedHashMap<>();
    words.forEach(word -> same.put(word, word));
    return oneOf(same);
  }

  /** A constant of an enumeration, spelt in lower case with hyphens. */
  public static <E extends Enum<E>> Spelling<E> oneOf(Class<E> constants) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E constant : constants.getEnumConstants()) {
      words.put(word(constant), constant);
    }
    return oneOf(words);
  }

  /** How a constant is spelt in files. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static <T> Spelling<T> shaped(Shape shape, Spelling<T> reader) {
    return reader.shaped(shape);
  }

  private static <T> Optional<T> word(String raw, Map<String, T> words, Spelling.Refusal refusal) {
    T value = words.get(raw);
    if (value == null) {
      Optional<String> near = Nearest.of(raw, words.keySet());
      refusal.because(
          "field-word",
          "`" + raw + "` is not one of the allowed words" + end(raw, words.keySet()),
          "Write " + choice(words.keySet()) + ".",
          near.isPresent() ? MendGrade.ASK : MendGrade.SHOW,
          near.orElse(""));
    }
    return Optional.ofNullable(value);
  }

  private static String end(String raw, Collection<String> words) {
    String hint = Nearest.hint(raw, words);
    return hint.isEmpty() ? "." : hint;
  }

  private static String choice(Collection<String> words) {
    String all = String.join("`, `", words.stream().sorted().toList());
    return "one of `" + all + "`";
  }

  private static Optional<String> id(String raw, Spelling.Refusal refusal) {
    if (ID.matcher(raw).matches()) {
      return Optional.of(raw);
    }
    String better =
        raw.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
    refusal.because(
        "field-id",
        "`" + raw + "` is not an id.",
        "Use lower-case letters, digits and single hyphens, for instance `"
            + (better.isEmpty() ? "kitchen-counter" : better)
            + "`.");
    return Optional.empty();
  }

  private static Optional<LocalDate> date(String raw, Spelling.Refusal refusal) {
    if (DATE.matcher(raw).matches()) {
      try {
        return Optional.of(LocalDate.parse(raw));
      } catch (DateTimeException notInTheCalendar) {
        refusal.because(
            "field-date", "There is no day " + raw + ".", "Write a day of the calendar.");
        return Optional.empty();
      }
    }
    refusal.because(
        "field-date",
        "`" + raw + "` is not a date.",
        "Write year, month and day, for instance `2027-05-31`.");
    return Optional.empty();
  }
}
