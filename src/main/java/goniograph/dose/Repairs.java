package goniograph.dose;

import goniograph.dose.Fault.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The table of misspellings, in the order in which they are named and mended. */
final class Repairs {
  private static final String UNIT_WORD = "(?<=^[-0-9.]{1,40} )(\\p{L}+\\.?|°)$";
  private static final int GROUP = 3;

  private Repairs() {}

  static List<Repair> ofQuantity(Measure measure) {
    return joined(
        common(),
        List.of(
            Repair.first(
                Kind.CLOCK_TIME,
                "is written like a clock time, which some YAML readers turn into a plain number",
                "^(\\d+):(\\d\\d)$",
                found -> clock(found, measure)),
            Repair.first(
                Kind.QUOTE_MARK,
                "uses a quote mark for a unit, which means inches as well as seconds",
                "\\s*(\"|''|″|”|'|′|’)$",
                found -> quoteMark(found, measure))),
        ranges(),
        List.of(
            Repair.replacing(
                Kind.SPACE,
                "lacks the space before the unit",
                "(?<=\\d|\\.\\.)(?=(?:\\p{L}+\\.?|[%°])$)",
                " "),
            Repair.first(
                Kind.UNIT_UNKNOWN,
                "has a unit that is not a UCUM code",
                UNIT_WORD,
                found -> UnitWords.meant(found.group(1), measure)),
            new Repair(
                Kind.UNIT_MISSING,
                "has no unit",
                Pattern.compile("^[-0-9.]*\\d(\\.\\.)?\\s*$"),
                (text, found) ->
                    measure.units().stream()
                        .map(unit -> text.strip() + " " + unit.code())
                        .toList())));
  }

  static List<Repair> ofCount() {
    return joined(
        common(),
        ranges(),
        List.of(
            Repair.replacing(
                Kind.UNIT_UNWANTED,
                "has a unit, but counts and scores are plain whole numbers",
                "(?<=\\d|\\.\\.)\\s*[\\p{L}%°]+\\.?$",
                "")));
  }

  private static List<Repair> common() {
    return List.of(
        new Repair(
            Kind.FOREIGN_DIGITS,
            "has digits that are not 0 to 9",
            Pattern.compile("(?![0-9])\\p{Nd}|[٫．½¼¾]"),
            (text, found) -> List.of(latinDigits(text))),
        Repair.replacing(
            Kind.SPACE,
            "has a space too many or an unusual one",
            "[\\h\\v]{2,}|[\\h\\v&&[^ ]]",
            " "),
        Repair.replacing(Kind.SPACE, "begins or ends with a space", "^ | $", ""),
        new Repair(
            Kind.TWO_NUMBERS,
            "has two numbers; sets and repetitions are two fields",
            Pattern.compile("\\d\\s*[x×*]\\s*\\d"),
            (text, found) -> List.of()),
        Repair.first(
            Kind.DECIMAL_COMMA,
            "has a comma; only a decimal point is read",
            "(\\d),(\\d+)",
            Repairs::comma),
        Repair.replacing(
            Kind.LEADING_ZERO,
            "begins with a zero, which some YAML readers take for base eight",
            "(?<![\\d.])0+(?=\\d)|(?<=\\.\\.)0+(?=\\d)",
            ""),
        Repair.replacing(Kind.NUMBER_SPELLING, "has a plus sign", "^\\+\\s*(?=\\d)", ""),
        Repair.replacing(
            Kind.NUMBER_SPELLING, "has a typographic minus sign", "^−\\s*(?=\\d)", "-"),
        Repair.replacing(
            Kind.NUMBER_SPELLING, "begins with a point", "(?<![\\d.])\\.(?=\\d)", "0."),
        Repair.replacing(
            Kind.NUMBER_SPELLING,
            "has a point without a digit behind it",
            "(?<=\\d)\\.(?![\\d.])",
            ""));
  }

  private static List<Repair> ranges() {
    String what = "is a range without its two dots";
    String join = "(?:\\.{2,}|…|[-–—~]|\\bto\\b)";
    return List.of(
        Repair.replacing(
            Kind.RANGE_SPELLING,
            "has its unit twice",
            "(?<=\\d)\\s*(\\p{L}+|%)\\s*" + join + "\\s*(\\d+(?:\\.\\d+)?)\\s*\\1$",
            "..$2 $1"),
        Repair.replacing(
            Kind.RANGE_SPELLING,
            "has spaces about its dots",
            "(?<=\\d)(?:\\s+\\.\\.\\s*|\\.\\.\\s+)(?=\\d)",
            ".."),
        Repair.replacing(
            Kind.RANGE_SPELLING,
            what,
            "(?<=\\d)\\s*(?:\\.{3,}|…|[-–—~]|\\bto\\b)\\s*(?=\\d)",
            ".."),
        Repair.replacing(Kind.RANGE_SPELLING, what, "^(?:<=|≤|<|up to|max\\.?)\\s*(?=\\d)", ".."),
        Repair.replacing(
            Kind.RANGE_SPELLING, what, "^(?:>=|≥|>|at least)\\s*(\\d+(?:\\.\\d+)?)", "$1.."),
        Repair.replacing(
            Kind.RANGE_SPELLING, what, "^(\\d+(?:\\.\\d+)?)\\s*(\\p{L}*)\\+$", "$1.. $2"));
  }

  private static List<String> clock(MatchResult found, Measure measure) {
    BigDecimal small =
        new BigDecimal(found.group(1))
            .multiply(BigDecimal.valueOf(60))
            .add(new BigDecimal(found.group(2)));
    Unit large = measure == Measure.HOURS ? Unit.HOUR : Unit.MINUTE;
    Unit one = measure == Measure.HOURS ? Unit.MINUTE : Unit.SECOND;
    Quantity total = new Quantity(small, one);
    return Stream.concat(total.in(large).stream(), Stream.of(total))
        .filter(meant -> measure.units().contains(meant.unit()))
        .map(Quantity::toString)
        .toList();
  }

  private static List<String> quoteMark(MatchResult found, Measure measure) {
    boolean single = "'′’".contains(found.group(1));
    return switch (measure) {
      case SECONDS -> List.of(single ? " min" : " s");
      case HOURS -> List.of(" min");
      default -> List.of();
    };
  }

  private static List<String> comma(MatchResult found) {
    String decimal = found.group(1) + "." + found.group(2);
    String thousands = found.group(1) + found.group(2);
    return found.group(2).length() == GROUP ? List.of(thousands, decimal) : List.of(decimal);
  }

  private static String latinDigits(String text) {
    StringBuilder latin = new StringBuilder();
    text.codePoints().forEach(point -> latin.append(latin(point)));
    return latin.toString();
  }

  private static String latin(int point) {
    return switch (point) {
      case '٫', '．' -> ".";
      case '½' -> ".5";
      case '¼' -> ".25";
      case '¾' -> ".75";
      default ->
          Character.isDigit(point)
              ? String.valueOf(Character.digit(point, 10))
              : Character.toString(point);
    };
  }

  @SafeVarargs
  private static List<Repair> joined(List<Repair>... tables) {
    List<Repair> all = new ArrayList<>();
    for (List<Repair> table : tables) {
      all.addAll(table);
    }
    return List.copyOf(all);
  }
}
