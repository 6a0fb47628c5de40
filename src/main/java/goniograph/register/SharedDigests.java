package goniograph.register;

import goniograph.matter.Yaml;
import goniograph.matter.YamlReader;
import goniograph.source.Files;
import java.util.Collection;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What all sheets use, as it stands.
 *
 * @param sourceLanguage the language the statements and phrases are written in
 * @param rules digest of each rule file, by file name without ending
 * @param statements digest of each statement, by language tag and statement id
 * @param phrases digest of the phrases, by language tag
 */
public record SharedDigests(
    String sourceLanguage,
    SortedMap<String, String> rules,
    SortedMap<String, SortedMap<String, String>> statements,
    SortedMap<String, String> phrases) {

  private static final String RULES = "shared/rules";
  private static final String ENDING = ".yaml";

  public SharedDigests {
    rules = Sorted.copy(rules);
    statements = Sorted.copy(statements);
    phrases = Sorted.copy(phrases);
  }

  /** Reads the shared files of a library. */
  public static SharedDigests read(
      Files files, String sourceLanguage, Collection<String> languages) {
    TreeMap<String, String> rules = new TreeMap<>();
    for (String path : files.list(RULES)) {
      if (path.endsWith(ENDING)) {
        String name = path.substring(RULES.length() + 1, path.length() - ENDING.length());
        yaml(files, path).ifPresent(file -> rules.put(name, Digests.whole(file)));
      }
    }
    TreeMap<String, SortedMap<String, String>> statements = new TreeMap<>();
    TreeMap<String, String> phrases = new TreeMap<>();
    for (String language : languages) {
      yaml(files, statementFile(language))
          .ifPresent(file -> statements.put(language, Digests.statements(file)));
      yaml(files, phraseFile(language))
          .ifPresent(file -> phrases.put(language, Digests.whole(file)));
    }
    return new SharedDigests(sourceLanguage, rules, statements, phrases);
  }

  /** The path of a rule file. */
  public static String ruleFile(String name) {
    return RULES + "/" + name + ENDING;
  }

  /** The path of the statements of a language. */
  public static String statementFile(String language) {
    return "shared/statements/" + language + ENDING;
  }

  /** The path of the phrases of a language. */
  public static String phraseFile(String language) {
    return "shared/phrases/" + language + ENDING;
  }

  /** A rule file as it stands. */
  public Optional<Text> rule(String name) {
    return Optional.ofNullable(rules.get(name)).map(Text::source);
  }

  /** A statement in a language as it stands; empty where the language or the source lacks it. */
  public Optional<Text> statement(String language, String id) {
    return text(language, statementDigest(language, id), statementDigest(sourceLanguage, id));
  }

  /** The phrases of a language as they stand. */
  public Optional<Text> phrases(String language) {
    return text(
        language,
        Optional.ofNullable(phrases.get(language)),
        Optional.ofNullable(phrases.get(sourceLanguage)));
  }

  private Optional<String> statementDigest(String language, String id) {
    return Optional.ofNullable(statements.get(language))
        .flatMap(ids -> Optional.ofNullable(ids.get(id)));
  }

  private Optional<Text> text(String language, Optional<String> own, Optional<String> source) {
    return language.equals(sourceLanguage)
        ? own.map(Text::source)
        : own.flatMap(digest -> source.map(from -> Text.translation(digest, from)));
  }

  private static Optional<Yaml> yaml(Files files, String path) {
    return files.text(path).map(YamlReader::read);
  }
}
