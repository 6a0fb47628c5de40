package goniograph.register;

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
}
