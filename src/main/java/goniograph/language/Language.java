package goniograph.language;

import com.ibm.icu.text.CaseMap;
import com.ibm.icu.text.ListFormatter;
import com.ibm.icu.text.LocaleDisplayNames;
import com.ibm.icu.text.NumberFormat;
import com.ibm.icu.text.NumberingSystem;
import com.ibm.icu.text.PluralRules;
import com.ibm.icu.util.IllformedLocaleException;
import com.ibm.icu.util.ULocale;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One language as a clinic sets it. The digit set is always explicit, so that a newer CLDR changes
 * no sheet; dates are of the Gregorian calendar in every language.
 *
 * @param tag BCP 47 tag without extensions, as folders and files are named: {@code ar}, {@code
 *     pt-BR}
 * @param digits CLDR name of the numbering system: {@code latn}, {@code arab}, {@code deva} …
 * @param locale language, script and region with {@code nu} and {@code ca} set
 */
public record Language(String tag, String digits, ULocale locale) {
  /** English with the digits 0 to 9. */
  public static final Language ENGLISH = of("en").orElseThrow();

  /**
   * The language of a BCP 47 tag; its digit set may be asked for by {@code -u-nu-}, otherwise it is
   * CLDR's. Nothing if the tag is malformed or CLDR has no plural rules for the language.
   */
  public static Optional<Language> of(String tag) {
    try {
      ULocale asked = new ULocale.Builder().setLanguageTag(tag).build();
      return known(asked) ? Optional.of(of(asked)) : Optional.empty();
    } catch (IllformedLocaleException malformed) {
      return Optional.empty();
    }
  }

  private static Language of(ULocale asked) {
    String digits = NumberingSystem.getInstance(asked).getName();
    ULocale plain = new ULocale.Builder().setLocale(asked).clearExtensions().build();
    return new Language(plain.toLanguageTag(), digits, located(regional(plain), digits));
  }

  private static boolean known(ULocale locale) {
    return Arrays.stream(PluralRules.getAvailableULocales())
        .anyMatch(known -> known.getLanguage().equals(locale.getLanguage()));
  }

  /**
   * English without a region is that of the world, not of the United States: {@code 31 May 2027}.
   */
  private static ULocale regional(ULocale plain) {
    return plain.toLanguageTag().equals("en") ? new ULocale("en", "001") : plain;
  }

  private static ULocale located(ULocale plain, String digits) {
    return new ULocale.Builder()
        .setLocale(plain)
        .setUnicodeLocaleKeyword("nu", digits)
        .setUnicodeLocaleKeyword("ca", "gregory")
        .build();
  }

  /** The same with another set of decimal digits; nothing if CLDR knows none of that name. */
  public Optional<Language> withDigits(String name) {
    return Arrays.asList(NumberingSystem.getAvailableNames()).contains(name)
            && !NumberingSystem.getInstanceByName(name).isAlgorithmic()
        ? Optional.of(new Language(tag, name, located(locale, name)))
        : Optional.empty();
  }

  /** The same with the dates and weeks of a region, the tag unchanged: {@code en} in {@code GB}. */
  public Language inRegion(String region) {
    ULocale there = new ULocale.Builder().setLocale(locale).setRegion(region).build();
    return new Language(tag, digits, there);
  }

  /** Which way it is written. */
  public Direction direction() {
    return locale.isRightToLeft() ? Direction.RIGHT_TO_LEFT : Direction.LEFT_TO_RIGHT;
  }

  /** Its name in its own script, standing alone: with a capital where the script has them. */
  public String ownName() {
    return name(locale);
  }

  /** Its name in English. */
  public String englishName() {
    return name(ULocale.ENGLISH);
  }

  private String name(ULocale in) {
    String name = LocaleDisplayNames.getInstance(in).localeDisplayName(tag);
    return CaseMap.toTitle().wholeString().noLowercase().apply(in.toLocale(), null, name);
  }

  /** Words put together as a list: {@code a, b and c}. */
  public String list(List<String> words) {
    return ListFormatter.getInstance(locale).format(words);
  }

  /** Words made a sentence's beginning: with a capital where the script has them. */
  public String capitalised(String words) {
    return CaseMap.toTitle().wholeString().noLowercase().apply(locale.toLocale(), null, words);
  }

  /** A number with this language's digits and decimal mark, up to three decimals, not grouped. */
  public String number(Number value) {
    NumberFormat format = NumberFormat.getInstance(locale);
    format.setGroupingUsed(false);
    return format.format(value);
  }
}
