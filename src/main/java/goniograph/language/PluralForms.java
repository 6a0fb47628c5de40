package goniograph.language;

import com.ibm.icu.text.PluralRules;
import com.ibm.icu.text.PluralRules.PluralType;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The CLDR plural forms that numbers on a sheet reach in a language: those of whole numbers from 0
 * to 9999 and of decimals as loads and times have them. Forms that only millions or other fractions
 * reach are not asked for.
 */
public final class PluralForms {
  private static final int WHOLE = 10_000;
  private static final int TENTHS = 200;

  private final Map<String, Set<Double>> cardinal;
  private final Map<String, Set<Double>> ordinal;
  private final PluralRules rules;

  private PluralForms(Language language) {
    this.rules = PluralRules.forLocale(language.locale(), PluralType.CARDINAL);
    this.cardinal = reached(rules, DoubleStream.concat(whole(), decimals()));
    this.ordinal = reached(PluralRules.forLocale(language.locale(), PluralType.ORDINAL), whole());
  }

  /** The forms of a language. */
  public static PluralForms of(Language language) {
    return new PluralForms(language);
  }

  /** The forms a plural must have, by CLDR keyword. */
  public Set<String> required() {
    return cardinal.keySet();
  }

  /** The forms an ordinal must have, by CLDR keyword. */
  public Set<String> requiredOrdinals() {
    return ordinal.keySet();
  }

  /** The form of a number: {@code zero one two few many other}. */
  public String form(double number) {
    return rules.select(number);
  }

  /** The forms missing, where these forms and these exact numbers ({@code =0}) are given. */
  Set<String> missing(boolean ordinals, Set<String> forms, Set<Double> exact) {
    Set<String> missing = new TreeSet<>();
    (ordinals ? ordinal : cardinal)
        .forEach(
            (form, numbers) -> {
              if (!forms.contains(form) && !exact.containsAll(numbers)) {
                missing.add(form);
              }
            });
    return missing;
  }

  private static DoubleStream whole() {
    return IntStream.range(0, WHOLE).asDoubleStream();
  }

  /** Tenths below 20, and quarters. */
  private static DoubleStream decimals() {
    DoubleStream tenths =
        IntStream.range(0, TENTHS).filter(n -> n % 10 != 0).mapToDouble(n -> n / 10.0);
    return DoubleStream.concat(tenths, DoubleStream.of(0.25, 0.75, 1.25, 1.75, 2.25, 2.75));
  }

  private static Map<String, Set<Double>> reached(PluralRules rules, DoubleStream numbers) {
    Map<String, Set<Double>> reached = new TreeMap<>();
    numbers.forEach(
        number ->
            reached.computeIfAbsent(rules.select(number), form -> new TreeSet<>()).add(number));
    return Collections.unmodifiableMap(reached);
  }
}
