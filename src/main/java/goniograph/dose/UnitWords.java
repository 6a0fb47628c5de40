package goniograph.dose;

import java.util.List;
import java.util.Locale;

/** What people write for a unit, and the UCUM codes it may mean. */
final class UnitWords {
  private record Words(Unit unit, List<String> words) {
    Words(Unit unit, String words) {
      this(unit, List.of(words.split(" ")));
    }
  }

  private static final List<Words> TABLE =
      List.of(
          new Words(Unit.SECOND, "s sec secs second seconds"),
          new Words(Unit.MINUTE, "m min mins minute minutes"),
          new Words(Unit.HOUR, "h hr hrs hour hours"),
          new Words(Unit.DAY, "d day days"),
          new Words(Unit.WEEK, "w wk wks week weeks"),
          new Words(Unit.MONTH, "m mo mon mos month months"),
          new Words(Unit.KILOGRAM, "kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes"),
          new Words(Unit.GRAM, "g gr gram grams gramme grammes"),
          new Words(Unit.NEWTON, "n newton newtons"),
          new Words(Unit.CENTIMETRE, "cm cms centimetre centimetres centimeter centimeters"),
          new Words(Unit.METRE, "m metre metres meter meters"),
          new Words(Unit.DEGREE, "° deg degs degree degrees"),
          new Words(Unit.PERCENT, "percent pct"));

  private UnitWords() {}

  /** The codes of this measure that a word other than a code may mean. */
  static List<String> meant(String word, Measure measure) {
    String plain = word.toLowerCase(Locale.ROOT).replaceFirst("\\.$", "");
    return TABLE.stream()
        .filter(row -> row.words().contains(plain))
        .map(Words::unit)
        .filter(measure.units()::contains)
        .map(Unit::code)
        .filter(code -> !code.equals(word))
        .toList();
  }
}
