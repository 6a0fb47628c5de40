package goniograph.check;

import goniograph.check.rules.RuleBook;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.Library;
import goniograph.library.LibraryRead;
import goniograph.library.Programme;
import goniograph.pose.PoseFile;
import goniograph.pose.Solved;
import goniograph.register.Releases;
import goniograph.source.DiskFiles;
import goniograph.source.Files;
import goniograph.source.MemoryFiles;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The library of the repository, unsigned, of which tests change one file and look at what is then
 * found. Shared files are read once, and each text of a pose is solved once. Entries are checked
 * alone, programmes among all the others.
 */
final class DemoLibrary {
  static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final Approvals UNSIGNED =
      new Approvals(List.of(), new Releases(List.of()), List.of());
  private static final Checker CHECKER = new Checker(RuleBook.rules());

  private final SortedMap<String, String> files = new TreeMap<>();
  private final Library whole;
  private final Map<String, Poses> solved = new ConcurrentHashMap<>();
  private final Map<String, List<Finding>> before = new ConcurrentHashMap<>();

  DemoLibrary() {
    Files disk = DiskFiles.at(Path.of("."));
    for (String folder : List.of("content", "shared", "figures")) {
      disk.list(folder).stream()
          .filter(path -> !path.endsWith("register.yaml") && !path.startsWith("shared/releases"))
          .forEach(path -> files.put(path, disk.text(path).orElseThrow().text()));
    }
    whole = Library.read(memory(files)).library();
  }

  /** All files, path by path. */
  SortedMap<String, String> files() {
    return new TreeMap<>(files);
  }

  /** The whole library. */
  Library library() {
    return whole;
  }

  /** The text of a file. */
  String text(String path) {
    return Objects.requireNonNull(files.get(path), path);
  }

  static MemoryFiles memory(Map<String, String> texts) {
    MemoryFiles memory = new MemoryFiles();
    texts.forEach(memory::with);
    return memory;
  }

  /** Errors and warnings about an entry as it stands. */
  List<Finding> before(String entry) {
    return before.computeIfAbsent(entry, id -> found(id, Map.of()));
  }

  /** Errors and warnings about an entry, some of whose files or figures have other texts. */
  List<Finding> found(String entry, Map<String, String> changed) {
    return all(entry, changed).stream().filter(one -> one.level() != Level.NOTE).toList();
  }

  /** Errors and warnings that were not there before. */
  List<Finding> fresh(String entry, Map<String, String> changed) {
    List<String> old = before(entry).stream().map(DemoLibrary::key).toList();
    return found(entry, changed).stream().filter(one -> !old.contains(key(one))).toList();
  }

  private static String key(Finding one) {
    return one.rule() + one.level() + one.at().file() + one.what();
  }

  /** All findings, notes too. */
  List<Finding> all(String entry, Map<String, String> changed) {
    SortedMap<String, String> own = new TreeMap<>(files);
    own.putAll(changed);
    boolean alone = whole.entry(entry).filter(Programme.class::isInstance).isEmpty();
    own.keySet().removeIf(path -> alone && !path.startsWith("shared/") && !named(path, entry));
    if (changed.keySet().stream().anyMatch(path -> path.startsWith("shared/"))) {
      return check(memory(own));
    }
    own.keySet().removeIf(path -> path.startsWith("shared/"));
    LibraryRead read = Library.read(memory(own));
    List<Finding> findings =
        read.findings().stream().filter(one -> !one.at().file().startsWith("shared/")).toList();
    return check(new LibraryRead(withShared(read.library()), findings), UNSIGNED);
  }

  /** All findings of a library read anew, the register's too. */
  List<Finding> check(Files library) {
    LibraryRead read = Library.read(library);
    return check(read, Approvals.of(library, read.library(), TODAY));
  }

  private List<Finding> check(LibraryRead read, Approvals approvals) {
    return CHECKER.check(new Checked(read, poses(read.library()), approvals, TODAY));
  }

  /** The files of an entry, and the figures of all its steps. */
  private boolean named(String path, String entry) {
    return path.contains("/" + entry + "/")
        || path.startsWith("figures/") && figures(entry).contains(path);
  }

  /** Paths of the figures that an entry names. */
  List<String> figures(String entry) {
    List<String> paths = new ArrayList<>();
    whole
        .entry(entry)
        .ifPresent(
            one -> {
              String text = one.common().file().text();
              whole.figures().keySet().stream()
                  .filter(id -> text.matches("(?s).*figure: " + id + "\\b.*") || id.equals(entry))
                  .map(id -> "figures/" + id + ".yaml")
                  .forEach(paths::add);
            });
    return paths;
  }

  private Library withShared(Library own) {
    return new Library(
        whole.clinic(),
        own.entries(),
        own.broken(),
        whole.statements(),
        whole.phrases(),
        whole.terms(),
        whole.limits(),
        whole.requirements(),
        whole.tagRules(),
        whole.equipmentChecks(),
        whole.stock(),
        whole.sources(),
        own.figures());
  }

  /** Solved once for each text of a pose. */
  Poses poses(Library library) {
    SortedMap<String, PoseFile> read = new TreeMap<>();
    SortedMap<String, Solved> scenes = new TreeMap<>();
    List<Finding> findings = new ArrayList<>();
    library
        .figures()
        .forEach(
            (id, file) -> {
              Poses one =
                  solved.computeIfAbsent(id + "\n" + file.text(), key -> alone(id, file.text()));
              read.putAll(one.files());
              scenes.putAll(one.solved());
              findings.addAll(one.findings());
            });
    return new Poses(read, scenes, findings);
  }

  private static Poses alone(String id, String text) {
    return Poses.of(
        Library.read(new MemoryFiles().with("figures/" + id + ".yaml", text)).library());
  }

  /** The pose of a text that reads without an error. */
  Solved solved(String id, String text) {
    Poses poses = solved.computeIfAbsent(id + "\n" + text, key -> alone(id, text));
    return Objects.requireNonNull(poses.solved().get(id), id);
  }

  /** The line, from 1, at which a character stands. */
  static int line(String text, int index) {
    return (int) text.substring(0, index).chars().filter(c -> c == '\n').count() + 1;
  }
}
