package goniograph.register;

import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.matter.Located;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * One entry as it stands.
 *
 * @param id its id
 * @param file path of its source text
 * @param source digest of its source text, see {@link Digests#entry}
 * @param statements ids of all statements its sheets print
 * @param reviewDue the day by which it must be reviewed
 */
public record EntryDigests(
    String id,
    String file,
    String source,
    SortedSet<String> statements,
    Optional<LocalDate> reviewDue) {
  public EntryDigests {
    statements = Collections.unmodifiableSortedSet(new TreeSet<>(statements));
  }

  /** An entry of a library that was read. */
  public static EntryDigests of(Entry entry, Library library) {
    TreeSet<String> statements = new TreeSet<>();
    entry.statements().forEach(id -> statements.add(id.value()));
    entry.text().pieces().stream()
        .flatMap(piece -> piece.careLine().stream())
        .forEach(statements::add);
    return new EntryDigests(
        entry.id(),
        entry.common().file().path(),
        Digests.entry(entry, library),
        statements,
        entry.reviewDue().map(Located::value));
  }
}
