package goniograph.dose;

import goniograph.dose.Fault.Kind;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What a field takes, and how its text is read. */
public sealed interface ValueType {

  /** Reads a value exactly as typed. */
  Parsed<DoseValue> read(String raw);

  /** A right spelling. */
  String example();

  /** A count within bounds. */
  record ACount(Counts counts) implements ValueType {
    @Override
    public Parsed<DoseValue> read(String raw) {
      return counts.read(raw).map(DoseValue.Count::new);
    }

    @Override
    public String example() {
      return counts.example();
    }
  }

  /** A quantity. */
  record AnAmount(Measure measure) implements ValueType {
    @Override
    public Parsed<DoseValue> read(String raw) {
      return measure.read(raw).map(DoseValue.Amount::new);
    }

    @Override
    public String example() {
      return measure.example();
    }
  }

  /** A range of scores. */
  record Scores() implements ValueType {
    @Override
    public Parsed<DoseValue> read(String raw) {
      return Counts.SCORE.readRange(raw).map(DoseValue.Scores::new);
    }

    @Override
    public String example() {
      return "3..4";
    }
  }

  /** {@code true} or {@code false}, nothing else. */
  record Flag() implements ValueType {
    @Override
    public Parsed<DoseValue> read(String raw) {
      return new OneOf(List.of("true", "false"))
          .read(raw)
          .map(value -> new DoseValue.Flag(value.spelling().equals("true")));
    }

    @Override
    public String example() {
      return "true";
    }
  }

  /** A word of a closed list. */
  record OneOf(List<String> words) implements ValueType {
    public OneOf {
      words = List.copyOf(words);
    }

    @Override
    public Parsed<DoseValue> read(String raw) {
      return words.contains(raw)
          ? new Parsed.Good<>(new DoseValue.Word(raw))
          : new Parsed.Bad<>(
              new Fault(Kind.UNKNOWN_WORD, "`" + raw + "` is not a word of this list", words));
    }

    @Override
    public String example() {
      return words.get(0);
    }
  }

  /** An id: lower case letters and digits, joined by hyphens. */
  record Id(String example) implements ValueType {
    /** The spelling as a regular expression. */
    public static final Pattern SHAPE = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

    @Override
    public Parsed<DoseValue> read(String raw) {
      if (SHAPE.matcher(raw).matches()) {
        return new Parsed.Good<>(new DoseValue.Word(raw));
      }
      String near = raw.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
      String what = "`" + raw + "` is not an id: lower case letters, digits and hyphens";
      String offered = SHAPE.matcher(near).matches() ? near : example;
      return new Parsed.Bad<>(new Fault(Kind.UNKNOWN_WORD, what, List.of(offered)));
    }
  }
}
