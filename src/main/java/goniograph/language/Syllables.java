package goniograph.language;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Counts the syllables of an English word by its spelling: groups of vowels, less the silent ones,
 * more those that are two. Right for most plain words; common ones that break the rules are listed.
 * Its weakness: English spelling does not say where an e is silent or where two vowels part, so
 * names, compounds and learned words are often one off. A dictionary of sounds would do better.
 */
final class Syllables {
  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
  private static final List<Pattern> SILENT =
      patterns(
          "(?<![^aeiouy]l)(?<![aeiouy])e$",
          "(?<![^aeiouy]l)(?<![aeiouyszxcg])(?<![cs]h)es$",
          "(?<![aeiouytd])(?<![^aeiouy]r)ed$",
          "(?<=[aeiouy][^aeiouy]{1,2})e(?=(?:ful|less|ly|ment|ness))");
  private static final List<Pattern> SPLIT =
      patterns(
          "(?<![tscgxn]|ll)i[ao]",
          "eo$",
          "(?<![qg])ua",
          "[aeiouy]ing",
          "(?:s|th)m$",
          "(?<=[aeiouy][^aeiouy]{1,3})ie(?:r|st)$",
          "iet",
          "(?<![tc])ien[ct]",
          "[aeo]y(?!ed$|es$|e$)[aeou]",
          "(?<![aeiouyr])n't$");
  private static final Map<String, Integer> LISTED =
      Map.ofEntries(
          Map.entry("aches", 1),
          Map.entry("area", 3),
          Map.entry("create", 2),
          Map.entry("element", 3),
          Map.entry("everyone", 3),
          Map.entry("everything", 3),
          Map.entry("everywhere", 3),
          Map.entry("headaches", 2),
          Map.entry("idea", 3),
          Map.entry("science", 2),
          Map.entry("sideways", 2),
          Map.entry("someone", 2),
          Map.entry("something", 2),
          Map.entry("sometimes", 2),
          Map.entry("somewhere", 2),
          Map.entry("therefore", 2));

  private Syllables() {}

  /** Syllables of one word; at least 1. */
  static int of(String word) {
    String plain = word.toLowerCase(Locale.ROOT).replace('’', '\'');
    Integer listed = LISTED.get(plain);
    return listed != null ? listed : Math.max(1, bySpelling(plain));
  }

  private static int bySpelling(String word) {
    int groups = (int) VOWELS.matcher(word).results().count();
    return groups - found(SILENT, word) + found(SPLIT, word);
  }

  private static int found(List<Pattern> patterns, String word) {
    return (int) patterns.stream().filter(pattern -> pattern.matcher(word).find()).count();
  }

  private static List<Pattern> patterns(String... regexes) {
    return List.of(regexes).stream().map(Pattern::compile).toList();
  }
}
