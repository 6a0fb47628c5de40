package goniograph.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The words of one language that a checker looks for, read from {@code words-<tag>.properties}. */
public final class Words {
  private final SortedMap<String, List<String>> lists;

  private Words(SortedMap<String, List<String>> lists) {
    this.lists = lists;
  }

  /** The words of a language; empty lists if there is no file for it. */
  public static Words of(Language language) {
    String name = "words-" + language.locale().getLanguage() + ".properties";
    try (InputStream file = Words.class.getResourceAsStream(name)) {
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

  /** Words that turn a sentence round. */
  public List<String> negations() {
    return list("negation");
  }

  /** Phrases that tell to hold the breath, or not to. */
  public List<String> breathHolding() {
    return list("breath-holding");
  }

  /** Words for left. */
  public List<String> left() {
    return list("left");
  }

  /** Words for right. */
  public List<String> right() {
    return list("right");
  }

  /** Phrases with a word for left or right that name no side: {@code right angle}. */
  public List<String> notASide() {
    return list("side.silent");
  }

  /** Words of the trade that are never printed for a patient. */
  public List<String> neverPrinted() {
    return list("never-print");
  }

  /** Phrases that readers take in more than one way. */
  public List<String> ambiguous() {
    return list("ambiguous");
  }

  List<String> list(String key) {
    return lists.getOrDefault(key, List.of());
  }

  /** The lists whose keys begin so, by the rest of the key. */
  SortedMap<String, List<String>> below(String prefix) {
    return lists.entrySet().stream()
        .filter(entry -> entry.getKey().startsWith(prefix))
        .collect(
            Collectors.toMap(
                entry -> entry.getKey().substring(prefix.length()),
                Map.Entry::getValue,
                (one, two) -> one,
                TreeMap::new));
  }

  /** The number words, by value. */
  SortedMap<BigDecimal, List<String>> numbers() {
    SortedMap<BigDecimal, List<String>> numbers = new TreeMap<>();
    below("number.").forEach((value, words) -> numbers.put(new BigDecimal(value), words));
    return Collections.unmodifiableSortedMap(numbers);
  }
}
