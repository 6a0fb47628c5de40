package goniograph.exchange;

import goniograph.language.DoseNumbers;
import goniograph.language.Language;
import goniograph.language.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The numbers of a note: where each stands, and which field of the dose it may be about. */
final class NoteNumbers {
  private static final Pattern DIGITS = Pattern.compile("[0-9]+(?:[.,:/][0-9]+)*");
  private static final Pattern A_DAY =
      Pattern.compile("^,?\\s*(?:(?:a|per|each|every) day|daily)\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern A_WEEK =
      Pattern.compile("^,?\\s*(?:(?:a|per|each|every) week|weekly)\\b", Pattern.CASE_INSENSITIVE);

  /**
   * A number.
   *
   * @param from its first character
   * @param to behind its last, with its noun and what it is counted by
   * @param said the words as they stand in the note
   * @param value the number or range alone
   * @param field path of the empty field it probably belongs to; {@code dose} where none is near
   * @param asked the field or fields it may be about, in words for a question
   * @param slot the slot that says the same; empty where that is not certain
   */
  record Number(
      int from,
      int to,
      String said,
      String value,
      String field,
      String asked,
      Optional<String> slot) {}

  private record Guess(int to, String field, String asked, Optional<String> slot) {}

  private final DoseNumbers numbers = DoseNumbers.of(Words.of(Language.ENGLISH));

  /** All numbers of a text, in order. */
  List<Number> in(String text) {
    List<Number> all = new ArrayList<>();
    for (DoseNumbers.Found found : numbers.find(text)) {
      Guess guess = guess(text, found);
      String said = text.substring(found.from(), guess.to());
      all.add(
          new Number(
              found.from(),
              guess.to(),
              said,
              found.value() + found.upTo().map(high -> ".." + high).orElse(""),
              guess.field(),
              guess.asked(),
              guess.slot()));
    }
    Matcher digits = DIGITS.matcher(text);
    while (digits.find()) {
      int at = digits.start();
      if (all.stream().noneMatch(one -> one.from() <= at && at < one.to())) {
        all.add(unknown(at, digits.end(), text));
      }
    }
    all.sort(Comparator.comparingInt(Number::from));
    return all;
  }

  private static Number unknown(int from, int to, String text) {
    boolean score =
        text.substring(to).matches("(?s)\\s*(out of|of|/)\\s*(10|ten).*")
            || text.substring(0, from).matches("(?s).*(out of|of|/)\\s*");
    return new Number(
        from,
        to,
        text.substring(from, to),
        text.substring(from, to),
        score ? "dose.effort" : "dose",
        score ? "effort, or pain.during_max" : "which field",
        Optional.empty());
  }

  private static Guess guess(String text, DoseNumbers.Found found) {
    Matcher day = A_DAY.matcher(text.substring(found.end()));
    Matcher week = A_WEEK.matcher(text.substring(found.end()));
    boolean counted = found.counts().equals("reps") || found.counts().equals("sessions");
    if (counted && day.find()) {
      return sure(found.end() + day.end(), "dose.frequency.per_day", "per_day");
    }
    if ((counted || found.counts().equals("d")) && week.find()) {
      return sure(found.end() + week.end(), "dose.frequency.days_per_week", "days_per_week");
    }
    return guess(found, before(text, found.from()));
  }

  private static Guess guess(DoseNumbers.Found found, String before) {
    int to = found.end();
    return switch (found.counts()) {
      case "reps" -> sure(to, "dose.reps", "reps");
      case "sets" -> sure(to, "dose.sets", "sets");
      case "s" -> seconds(found, before);
      case "wk", "mo" -> sure(to, "dose.duration", "duration");
      case "kg", "g" -> unsure(to, "dose.load.kind", "load.mass");
      case "deg" -> unsure(to, "figure", "an angle of the pose file");
      case "cm", "m" -> unsure(to, "dose", "seat_height, step_height or the height of a support");
      case "min" -> unsure(to, "dose.hold", "hold, or rest");
      case "h" -> unsure(to, "dose.frequency.per_day", "frequency.gap");
      case "d" -> unsure(to, "dose.frequency.days_per_week", "days_per_week");
      case "percent" -> unsure(to, "dose", "which field, or a claim with its source");
      default ->
          found.cue() == DoseNumbers.Cue.TIMES
              ? unsure(to, "dose.sets", "sets, or reps")
              : unsure(to, "dose", "which field");
    };
  }

  private static Guess seconds(DoseNumbers.Found found, String before) {
    int to = found.end();
    if (before.matches("(?s).*\\bcount (slowly )?(up )?to\\s*")) {
      return new Guess(to, "dose.hold", "hold", Optional.of("hold.count"));
    } else if (before.matches("(?s).*\\b(rest|pause)\\b[^.,;]*")) {
      return sure(to, "dose.rest", "rest");
    } else if (before.matches("(?s).*\\b(relax|let go)\\b[^.,;]*")) {
      return sure(to, "dose.relax", "relax");
    }
    return before.matches("(?s).*\\b(hold|stay|keep)\\b[^.;]*")
        ? sure(to, "dose.hold", "hold")
        : unsure(to, "dose.hold", "hold, or a part of the tempo");
  }

  /** What stands before a place in the same sentence, in lower case. */
  private static String before(String text, int at) {
    String all = text.substring(0, at).toLowerCase(Locale.ROOT);
    return all.substring(Math.max(all.lastIndexOf(". "), 0));
  }

  private static Guess sure(int to, String field, String slot) {
    return new Guess(to, field, slot, Optional.of(slot));
  }

  private static Guess unsure(int to, String field, String asked) {
    return new Guess(to, field, asked, Optional.empty());
  }
}
