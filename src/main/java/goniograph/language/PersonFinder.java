package goniograph.language;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds what tells of one person: names with titles, days of birth, ways to reach someone. */
public final class PersonFinder {
  private static final Pattern MAIL =
      Pattern.compile(
          "(?<![\\p{L}\\p{Nd}._%+-])[\\p{L}\\p{Nd}._%+-]{1,64}+@"
              + "[\\p{L}\\p{Nd}-]{1,63}(?:\\.[\\p{L}\\p{Nd}-]{1,63}){1,8}");
  private static final Pattern PHONE =
      Pattern.compile(
          "(?<![\\p{L}\\p{Nd}.:/-])(?:\\+|0)\\p{Nd}(?:[ ()/-]{0,2}\\p{Nd}){5,13}(?!\\p{Nd})");
  private static final Pattern LONG_NUMBER =
      Pattern.compile("(?<![\\p{L}\\p{Nd}.#-])\\p{Nd}{6,}(?![\\p{L}\\p{Nd}])");
  private static final String DATE =
      "(?:\\p{Nd}{1,2}[./-]\\p{Nd}{1,2}[./-]\\p{Nd}{2,4}|\\p{Nd}{4}-\\p{Nd}{2}-\\p{Nd}{2}"
          + "|\\p{Nd}{1,2}\\.? \\p{L}+ \\p{Nd}{4}|\\p{L}+ \\p{Nd}{1,2}, \\p{Nd}{4}|\\p{Nd}{4})";

  /** What kind of personal data something is; the words themselves are never repeated. */
  public enum Kind {
    NAME("a name with a title"),
    BIRTH("a date of birth"),
    MAIL("an e-mail address"),
    RECORD("a record number"),
    PHONE("a telephone number"),
    NUMBER("a long number, such as of a person or a file");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** A place in a text, and what stands there. */
  public record Found(int from, int to, Kind kind) {}

  private record Sought(Kind kind, Pattern pattern) {}

  private final List<Sought> sought = new ArrayList<>();

  private PersonFinder(Words words) {
    add(Kind.MAIL, MAIL);
    add(
        words.list("person.title"),
        Kind.NAME,
        "\\.?\\s+\\p{Lu}[\\p{L}'’-]+",
        "\\.?\\s+\\p{Lo}{2,}");
    add(words.list("person.birth"), Kind.BIRTH, "[:\\s,]+" + DATE, "");
    add(words.list("person.record"), Kind.RECORD, "[:\\s#]*[\\p{L}-]{0,4}\\p{Nd}{3,}", "");
    add(Kind.PHONE, PHONE);
    add(Kind.NUMBER, LONG_NUMBER);
  }

  /** A finder with the words of a language. */
  public static PersonFinder of(Words words) {
    return new PersonFinder(words);
  }

  private void add(Kind kind, Pattern pattern) {
    sought.add(new Sought(kind, pattern));
  }

  /** Titles are found as they are spelt, so that "miss a day" is no lady. */
  private void add(List<String> leads, Kind kind, String behind, String orBehind) {
    if (!leads.isEmpty()) {
      String lead =
          leads.stream()
              .sorted(Comparator.comparingInt((String one) -> -one.length()))
              .map(Pattern::quote)
              .collect(Collectors.joining("|"));
      String tail = orBehind.isEmpty() ? behind : "(?:" + behind + "|" + orBehind + ")";
      int flags = kind == Kind.NAME ? 0 : Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
      add(kind, Pattern.compile("(?<![\\p{L}\\p{Nd}])(?:" + lead + ")" + tail, flags));
    }
  }

  /** All places in order; what is found as one kind is not found as another too. */
  public List<Found> find(String text) {
    List<Found> all = new ArrayList<>();
    for (Sought one : sought) {
      one.pattern()
          .matcher(text)
          .results()
          .map(hit -> new Found(hit.start(), hit.end(), one.kind()))
          .filter(hit -> all.stream().noneMatch(other -> overlap(hit, other)))
          .forEach(all::add);
    }
    return all.stream().sorted(Comparator.comparingInt(Found::from)).toList();
  }

  private static boolean overlap(Found one, Found other) {
    return one.from() < other.to() && other.from() < one.to();
  }
}
