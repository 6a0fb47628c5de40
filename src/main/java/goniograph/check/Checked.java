package goniograph.check;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.language.Language;
import goniograph.language.Words;
import goniograph.library.Entry;
import goniograph.library.Exercise;
import goniograph.library.Library;
import goniograph.library.LibraryRead;
import goniograph.library.Version;
import goniograph.source.Files;
import goniograph.source.Span;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Everything that rules look at.
 *
 * @param read the library, and what reading it found
 * @param poses its poses, solved
 * @param approvals what is signed
 * @param today the day that counts as today
 */
public record Checked(LibraryRead read, Poses poses, Approvals approvals, LocalDate today) {
  /** What rules say at the exact place, and the register only of the whole file. */
  private static final Set<String> SAID_BY_RULES =
      Set.of("review-due", "piece-missing", "piece-stale");

  /** The library in a folder, read whole, its poses solved. */
  public static Checked of(Files files, LocalDate today) {
    LibraryRead read = Library.read(files);
    return new Checked(
        read, Poses.of(read.library()), Approvals.of(files, read.library(), today), today);
  }

  /** The library. */
  public Library library() {
    return read.library();
  }

  /** All entries. */
  public Stream<Entry> entries() {
    return library().entries().stream();
  }

  /** All exercises. */
  public Stream<Exercise> exercises() {
    return library().exercises().stream();
  }

  /** Ids of all entries, also of those that could not be read, sorted. */
  public List<String> ids() {
    return Stream.concat(entries().map(Entry::id), library().broken().stream()).sorted().toList();
  }

  /**
   * Whether the front matter of an entry was read without an error. Where it was not, what seems to
   * be missing may only be misspelt, and the one finding about that is enough.
   */
  public boolean readWell(Entry entry) {
    Span matter = entry.common().frontMatter().at();
    return errors().noneMatch(finding -> within(finding.at(), matter));
  }

  /** Whether a text was read without an error, as {@link #readWell(Entry)}. */
  public boolean readWell(Version version) {
    return errors().noneMatch(finding -> finding.at().file().equals(version.file().path()));
  }

  private Stream<Finding> errors() {
    return read.findings().stream().filter(finding -> finding.level() == Level.ERROR);
  }

  private static boolean within(Span at, Span whole) {
    return at.file().equals(whole.file())
        && at.start() >= whole.start()
        && at.start() <= whole.end();
  }

  /** A language as the clinic sets it; English for a tag that is no language. */
  public Language language(String tag) {
    return library().language(tag).orElse(Language.ENGLISH);
  }

  /** The words of a language that rules look for. */
  public Words words(String tag) {
    return Words.of(language(tag));
  }

  /** What reading the library and its poses found, and what is not signed. */
  public List<Finding> findings() {
    Stream<Finding> register =
        approvals.findings().stream().filter(one -> !SAID_BY_RULES.contains(one.rule()));
    return Stream.of(read.findings().stream(), poses.findings().stream(), register)
        .flatMap(all -> all)
        .toList();
  }
}
