package goniograph.library;

import goniograph.finding.Finding;
import goniograph.language.Language;
import goniograph.matter.Located;
import goniograph.source.Files;
import goniograph.source.SourceFile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The whole library of a clinic.
 *
 * @param clinic the clinic, if its file could be read
 * @param entries all entries that could be read: exercises, advice, programmes, each by id
 * @param broken ids of entries that could not be read
 * @param statements the statements, in the order of the source language's file
 * @param phrases the phrases by language tag
 * @param terms the terms by language tag
 * @param limits the table of dose limits
 * @param requirements the table of required statements
 * @param tagRules the table of precaution tags
 * @param equipmentChecks the table of equipment that is looked over before use
 * @param stock the clinic's stock
 * @param sources the cited sources
 * @param figures the pose files by id
 */
public record Library(
    Optional<Clinic> clinic,
    List<Entry> entries,
    List<String> broken,
    List<Statement> statements,
    SortedMap<String, PhraseSource> phrases,
    SortedMap<String, Terms> terms,
    List<DoseLimit> limits,
    List<Requirement> requirements,
    List<TagRule> tagRules,
    List<EquipmentCheck> equipmentChecks,
    Stock stock,
    List<Source> sources,
    SortedMap<String, SourceFile> figures) {
  /** The language in which entries, statements and phrases are written first. */
  public static final String SOURCE_LANGUAGE = "en";

  public Library {
    entries = List.copyOf(entries);
    broken = List.copyOf(broken);
    statements = List.copyOf(statements);
    phrases = Collections.unmodifiableSortedMap(new TreeMap<>(phrases));
    terms = Collections.unmodifiableSortedMap(new TreeMap<>(terms));
    limits = List.copyOf(limits);
    requirements = List.copyOf(requirements);
    tagRules = List.copyOf(tagRules);
    equipmentChecks = List.copyOf(equipmentChecks);
    sources = List.copyOf(sources);
    figures = Collections.unmodifiableSortedMap(new TreeMap<>(figures));
  }

  /** Reads the library in a folder. Content never makes it throw; what is wrong is in findings. */
  public static LibraryRead read(Files files) {
    List<Finding> findings = new ArrayList<>();
    SharedFiles shared = new SharedFiles(files, findings::add);
    RuleTables rules = RuleTables.read(shared);
    StockReader stock = new StockReader(shared);
    WordsReader words = new WordsReader(shared);
    List<Entry> entries = new ArrayList<>();
    List<String> broken = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      for (String id : folders(files, kind.folder())) {
        new EntryReader(files, kind, id, findings::add)
            .read()
            .ifPresentOrElse(entries::add, () -> broken.add(id));
      }
    }
    Library library =
        new Library(
            ClinicReader.read(shared),
            entries,
            broken,
            new StatementReader(shared).statements(),
            words.phrases(),
            words.terms(),
            rules.limits(),
            rules.requirements(),
            rules.tagRules(),
            rules.equipmentChecks(),
            stock.stock(),
            stock.sources(),
            figures(files));
    return new LibraryRead(library, findings);
  }

  private static Set<String> folders(Files files, String folder) {
    Set<String> names = new LinkedHashSet<>();
    for (String path : files.list(folder)) {
      String below = path.substring(folder.length() + 1);
      if (below.contains("/")) {
        names.add(below.substring(0, below.indexOf('/')));
      }
    }
    return names;
  }

  /** The pose files of a library's folder, by id. */
  public static SortedMap<String, SourceFile> figures(Files files) {
    SortedMap<String, SourceFile> figures = new TreeMap<>();
    for (String path : files.list("figures")) {
      if (path.endsWith(".yaml")) {
        String id = path.substring("figures/".length(), path.length() - ".yaml".length());
        files.text(path).ifPresent(file -> figures.put(id, file));
      }
    }
    return figures;
  }

  /** The entry with this id. */
  public Optional<Entry> entry(String id) {
    return entries.stream().filter(entry -> entry.id().equals(id)).findFirst();
  }

  /** The exercise with this id. */
  public Optional<Exercise> exercise(String id) {
    return entry(id).filter(Exercise.class::isInstance).map(Exercise.class::cast);
  }

  /** All exercises, by id. */
  public List<Exercise> exercises() {
    return all(Exercise.class);
  }

  /** All advice topics, by id. */
  public List<Advice> advice() {
    return all(Advice.class);
  }

  /** All programmes, by id. */
  public List<Programme> programmes() {
    return all(Programme.class);
  }

  private <T extends Entry> List<T> all(Class<T> kind) {
    return entries.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** The statement with this id. */
  public Optional<Statement> statement(String id) {
    return statements.stream().filter(one -> one.id().value().equals(id)).findFirst();
  }

  /** The phrases of a language. */
  public Optional<PhraseSource> phrases(String language) {
    return Optional.ofNullable(phrases.get(language));
  }

  /** A language as the clinic prints it, with its digits; empty for a tag that is no language. */
  public Optional<Language> language(String tag) {
    Optional<String> digits =
        clinic.flatMap(one -> Optional.ofNullable(one.digits().get(tag))).map(Located::value);
    return Language.of(tag).map(language -> digits.flatMap(language::withDigits).orElse(language));
  }

  /** The terms of a language. */
  public Optional<Terms> terms(String language) {
    return Optional.ofNullable(terms.get(language));
  }

  /** The rows for a precaution tag; none where the clinic has no rule for it. */
  public List<TagRule> tagRules(String tag) {
    return tagRules.stream().filter(row -> row.region(tag).isPresent()).toList();
  }

  /** The source with this id. */
  public Optional<Source> source(String id) {
    return sources.stream().filter(one -> one.id().value().equals(id)).findFirst();
  }

  /** The pose file with this id. */
  public Optional<SourceFile> figure(String id) {
    return Optional.ofNullable(figures.get(id));
  }

  /** The languages sheets are made in, the source language first, as the clinic names them. */
  public List<String> languages() {
    Set<String> tags = new LinkedHashSet<>(List.of(SOURCE_LANGUAGE));
    clinic.ifPresent(one -> one.languages().forEach(tag -> tags.add(tag.value())));
    return List.copyOf(tags);
  }
}
