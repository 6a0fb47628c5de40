package goniograph.translation;

import java.util.Optional;

/**
 * One piece of the source or of a version, and how the two stand to each other.
 *
 * @param state the state
 * @param source the source piece; empty only if the state is {@link State#LEFT_OVER}
 * @param version the version's piece; empty only if the state is {@link State#MISSING}
 */
public record PieceState(State state, Optional<TextPiece> source, Optional<TextPiece> version) {

  /** How a version's piece stands to its source. */
  public enum State {
    /** Made from the source as it is now. */
    FRESH,
    /** Made from the source as it was, or from where it was. */
    STALE,
    /** Not there. */
    MISSING,
    /** There, but nobody noted what it was made from. */
    UNRECORDED,
    /** There, but the source has nothing for it. */
    LEFT_OVER
  }

  /** Its name for people. */
  public String name() {
    return source.or(() -> version).map(TextPiece::name).orElse("");
  }
}
