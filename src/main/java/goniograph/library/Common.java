package goniograph.library;

import goniograph.matter.Located;
import goniograph.matter.Node;
import goniograph.source.SourceFile;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What every kind of entry has.
 *
 * @param id its id, the name of its folder
 * @param file its source-language file
 * @param frontMatter its front matter as read
 * @param versions its text by language tag, the source language among them
 * @param statements the statements it lists
 * @param evidence what its claims rest on
 * @param reviewDue the day by which it must be reviewed
 * @param register its register file as read; empty if there is none
 */
public record Common(
    Located<String> id,
    SourceFile file,
    Node.Fields frontMatter,
    SortedMap<String, Version> versions,
    List<Located<String>> statements,
    List<Evidence> evidence,
    Optional<Located<LocalDate>> reviewDue,
    Optional<Node> register) {
  public Common {
    versions = Collections.unmodifiableSortedMap(new TreeMap<>(versions));
    statements = List.copyOf(statements);
    evidence = List.copyOf(evidence);
  }

  /** Its folder, for instance {@code content/exercises/hp-chair-rise}. */
  public String folder() {
    return file.path().substring(0, file.path().lastIndexOf('/'));
  }

  /** The ids of the claims for which it gives evidence. */
  public List<String> claims() {
    return evidence.stream().flatMap(one -> one.claim().stream()).map(Located::value).toList();
  }
}
