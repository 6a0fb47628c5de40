package goniograph.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** The words of one language that a checker looks for, read from {@code words-<tag>.properties}. */
public final class Words {
  private static final String INSTEAD = ">";

  private static final Map<String, Words> READ = new ConcurrentHashMap<>();

  /** No words. */
  static final Words NONE = new Words(new TreeMap<>());

  private final SortedMap<String, List<String>> lists;
  private final Map<String, WordFinder> finders = new ConcurrentHashMap<>();

  private Words(SortedMap<String, List<String>> lists) {
    this.lists = lists;
  }

  /** The words of a language, read once; empty lists if there is no file for it. */
  public static Words of(Language language) {
    return READ.computeIfAbsent(language.locale().getLanguage(), Words::read);
  }

  private static Words read(String language) {
    try (InputStream file = Words.class.getResourceAsStream("words-" + language + ".properties")) {
      Properties entries = new Properties();
      if (file != null) {
        entries.load(new InputStreamReader(file, StandardCharsets.UTF_8));
      }
      return new Words(lists(entries));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static SortedMap<String, List<String>> lists(Properties entries) {
    SortedMap<String, List<String>> lists = new TreeMap<>();
    for (String key : entries.stringPropertyNames()) {
      List<String> words =
          Arrays.stream(entries.getProperty(key).split("\\|"))
              .map(String::strip)
              .filter(word -> !word.isEmpty())
              .toList();
      lists.put(key, words);
    }
    return lists;
  }

  /** Whether there are words for this language at all. */
  public boolean known() {
    return !lists.isEmpty();
  }

  /** The phrases of a list, as the comments of {@code words-en.properties} name them. */
  public List<String> list(String key) {
    return entries(key).stream().map(entry -> entry[0].strip()).toList();
  }

  /** Finds the phrases of a list. */
  public WordFinder finder(String key) {
    return finders.computeIfAbsent(key, list -> WordFinder.of(this, list(list)));
  }

  /** Finds the phrases of a list, but not inside those of the list {@code <key>.silent}. */
  public WordFinder senseFinder(String key) {
    String silent = key + ".silent";
    return finders.computeIfAbsent(
        key + " " + silent, both -> WordFinder.of(this, list(key), list(silent)));
  }

  /** The phrases of a list, each with the plain words to write instead, "" where none are said. */
  public SortedMap<String, String> instead(String key) {
    SortedMap<String, String> instead = new TreeMap<>();
    entries(key).forEach(one -> instead.put(one[0].strip(), one.length > 1 ? one[1].strip() : ""));
    return Collections.unmodifiableSortedMap(instead);
  }

  private List<String[]> entries(String key) {
    return lists.getOrDefault(key, List.of()).stream().map(entry -> entry.split(INSTEAD)).toList();
  }

  /** The lists whose keys begin so, by the rest of the key. */
  public SortedMap<String, List<String>> below(String prefix) {
    return lists.entrySet().stream()
        .filter(entry -> entry.getKey().startsWith(prefix))
        .collect(
            Collectors.toMap(
                entry -> entry.getKey().substring(prefix.length()),
                Map.Entry::getValue,
                (one, two) -> one,
                TreeMap::new));
  }

  /** Finders of the lists whose keys begin so, by the rest of the key. */
  SortedMap<String, WordFinder> finders(String prefix) {
    SortedMap<String, WordFinder> all = new TreeMap<>();
    below(prefix).forEach((key, list) -> all.put(key, WordFinder.of(this, list)));
    return all;
  }
}
