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
import java.util.Optional;
import java.util.Properties;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Phrases of one language that tell a patient to do something which needs care, by what it is: read
 * from {@code cues-<tag>.properties}. A phrase counts where no word of negation stands before it in
 * its clause, and where it is no part of a silent phrase.
 */
public final class Cues {
  private static final String SILENT = ".silent";
  private static final Map<String, Cues> LOADED = new ConcurrentHashMap<>();

  private final SortedMap<String, WordFinder> finders;
  private final Negation negation;

  private Cues(SortedMap<String, WordFinder> finders, Negation negation) {
    this.finders = finders;
    this.negation = negation;
  }

  /** The cues of the language with this tag; none if there is no file for it. */
  public static Cues of(String tag) {
    return LOADED.computeIfAbsent(tag, Cues::read);
  }

  private static Cues read(String tag) {
    Optional<Language> language = Language.of(tag);
    Words words = Words.of(language.orElse(Language.ENGLISH));
    Properties file =
        load("cues-" + language.map(one -> one.locale().getLanguage()).orElse("") + ".properties");
    SortedMap<String, WordFinder> finders = new TreeMap<>();
    for (String key : file.stringPropertyNames()) {
      if (!key.endsWith(SILENT)) {
        List<String> silent = phrases(file.getProperty(key + SILENT, ""));
        finders.put(key, WordFinder.of(words, phrases(file.getProperty(key)), silent));
      }
    }
    return new Cues(Collections.unmodifiableSortedMap(finders), Negation.of(words));
  }

  private static Properties load(String name) {
    Properties entries = new Properties();
    try (InputStream file = Cues.class.getResourceAsStream(name)) {
      if (file != null) {
        entries.load(new InputStreamReader(file, StandardCharsets.UTF_8));
      }
      return entries;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static List<String> phrases(String list) {
    return Arrays.stream(list.split("\\|")).map(String::strip).filter(p -> !p.isEmpty()).toList();
  }

  /** The first place in a text that gives this cue. */
  public Optional<WordFinder.Found> find(String name, String text) {
    return Optional.ofNullable(finders.get(name)).stream()
        .flatMap(finder -> finder.find(text).stream())
        .filter(found -> !negation.reaches(text, found.from()))
        .findFirst();
  }
}
