package goniograph.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The register file of one entry.
 *
 * @param entry signatures under its source text
 * @param versions signatures under its language versions, by language tag
 * @param pieces what each language version was made from, by language tag, in the order of its text
 * @param accepted warnings that someone lets stand
 */
public record EntryRegister(
    Signatures entry,
    SortedMap<String, Signatures> versions,
    SortedMap<String, List<PieceRecord>> pieces,
    List<AcceptedFinding> accepted) {

  /** Of an entry that nobody has signed. */
  public static final EntryRegister NONE =
      new EntryRegister(Signatures.NONE, new TreeMap<>(), new TreeMap<>(), List.of());

  public EntryRegister {
    versions = Sorted.copy(versions);
    pieces = Sorted.copy(pieces);
    accepted = List.copyOf(accepted);
  }

  /** Signatures under a language version. */
  public Signatures version(String language) {
    return versions.getOrDefault(language, Signatures.NONE);
  }

  /** The records of a language version, none where it has not been recorded. */
  public List<PieceRecord> pieces(String language) {
    return pieces.getOrDefault(language, List.of());
  }

  EntryRegister withEntry(Signatures signatures) {
    return new EntryRegister(signatures, versions, pieces, accepted);
  }

  EntryRegister withVersion(String language, Signatures signatures) {
    return new EntryRegister(entry, Sorted.with(versions, language, signatures), pieces, accepted);
  }

  EntryRegister withPieces(String language, List<PieceRecord> records) {
    Map<String, List<PieceRecord>> changed = new TreeMap<>(pieces);
    changed.put(language, List.copyOf(records));
    return new EntryRegister(entry, versions, new TreeMap<>(changed), accepted);
  }

  /** The register with this acceptance in place of an older one about the same finding. */
  public EntryRegister with(AcceptedFinding one) {
    List<AcceptedFinding> all = new ArrayList<>(accepted);
    all.removeIf(other -> other.finding().equals(one.finding()));
    all.add(one);
    return new EntryRegister(entry, versions, pieces, all);
  }
}
