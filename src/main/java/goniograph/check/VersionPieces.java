package goniograph.check;

import goniograph.library.Entry;
import goniograph.library.Version;
import goniograph.register.EntryRegister;
import goniograph.register.PiecePair;
import goniograph.register.VersionDigests;
import goniograph.translation.Comparison;
import goniograph.translation.PieceRecord;
import goniograph.translation.PieceState;
import goniograph.translation.PieceState.State;
import goniograph.translation.TextPiece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A language version held against its source text and against what its translator recorded.
 *
 * @param version the version
 * @param states every piece of the source in order, and what the version has besides
 */
public record VersionPieces(Version version, List<PieceState> states) {
  public VersionPieces {
    states = List.copyOf(states);
  }

  /** The pieces of a version of an entry. */
  public static VersionPieces of(Entry entry, Version version, EntryRegister signed) {
    List<PieceRecord> records =
        signed.pieces(version.language()).stream()
            .map(record -> new PieceRecord(record.source(), record.target()))
            .toList();
    return new VersionPieces(version, Comparison.of(entry.text(), version.body(), records));
  }

  /** The version as it stands, for the register. */
  public VersionDigests digests() {
    List<String> stale = new ArrayList<>(names(State.STALE));
    stale.addAll(surplus());
    return new VersionDigests(
        version.language(),
        version.file().path(),
        TextPiece.of(version.body()).stream().map(TextPiece::digest).toList(),
        stale,
        missing());
  }

  /** Names of the source pieces that the version lacks. */
  public List<String> missing() {
    return names(State.MISSING);
  }

  /** Names of the pieces that the source has nothing for. */
  public List<String> surplus() {
    return names(State.LEFT_OVER);
  }

  /** The version's pieces in order, each with the source piece it stands for now. */
  public List<PiecePair> pairs() {
    return TextPiece.of(version.body()).stream().flatMap(piece -> pair(piece).stream()).toList();
  }

  private Optional<PiecePair> pair(TextPiece piece) {
    return states.stream()
        .filter(state -> state.version().equals(Optional.of(piece)))
        .flatMap(state -> state.source().stream())
        .map(source -> new PiecePair(source.digest(), piece.digest()))
        .findFirst();
  }

  private List<String> names(State wanted) {
    return states.stream().filter(state -> state.state() == wanted).map(PieceState::name).toList();
  }
}
