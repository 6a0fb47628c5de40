package goniograph.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The register file of what all sheets use.
 *
 * @param rules signatures under the rule files, by file name without ending
 * @param statements signatures under the statements, by language tag and statement id
 * @param phrases signatures under the phrases, by language tag
 * @param recalls what must no longer be used
 * @param releases the frozen releases, oldest first
 */
public record SharedRegister(
    SortedMap<String, Signatures> rules,
    SortedMap<String, SortedMap<String, Signatures>> statements,
    SortedMap<String, Signatures> phrases,
    List<Recall> recalls,
    List<ReleaseRecord> releases) {

  /** Of a library in which nothing is signed. */
  public static final SharedRegister NONE =
      new SharedRegister(new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), List.of(), List.of());

  public SharedRegister {
    rules = Sorted.copy(rules);
    statements = Sorted.copy(statements);
    phrases = Sorted.copy(phrases);
    recalls = List.copyOf(recalls);
    releases = List.copyOf(releases);
  }

  /** Signatures under a rule file. */
  public Signatures rules(String file) {
    return rules.getOrDefault(file, Signatures.NONE);
  }

  /** Signatures under a statement in a language. */
  public Signatures statement(String language, String id) {
    return statements.getOrDefault(language, new TreeMap<>()).getOrDefault(id, Signatures.NONE);
  }

  /** Signatures under the phrases of a language. */
  public Signatures phrases(String language) {
    return phrases.getOrDefault(language, Signatures.NONE);
  }

  /** The recall of an entry or statement. */
  public Optional<Recall> recall(String id) {
    return recalls.stream().filter(recall -> recall.id().equals(id)).findFirst();
  }

  SharedRegister withRules(String file, Signatures signatures) {
    return new SharedRegister(
        Sorted.with(rules, file, signatures), statements, phrases, recalls, releases);
  }

  SharedRegister withStatement(String language, String id, Signatures signatures) {
    SortedMap<String, Signatures> ids = statements.getOrDefault(language, new TreeMap<>());
    return new SharedRegister(
        rules,
        Sorted.with(statements, language, Sorted.with(ids, id, signatures)),
        phrases,
        recalls,
        releases);
  }

  SharedRegister withPhrases(String language, Signatures signatures) {
    return new SharedRegister(
        rules, statements, Sorted.with(phrases, language, signatures), recalls, releases);
  }

  SharedRegister withRelease(ReleaseRecord release) {
    List<ReleaseRecord> longer = new ArrayList<>(releases);
    longer.add(release);
    return new SharedRegister(rules, statements, phrases, recalls, longer);
  }
}
