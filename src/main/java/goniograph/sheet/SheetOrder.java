package goniograph.sheet;

import goniograph.body.Side;
import goniograph.library.Entry;
import goniograph.library.Rung;
import java.util.Optional;

/**
 * Which sheet is wanted.
 *
 * @param entry the entry
 * @param language BCP 47 tag
 * @param side the side that was answered, where the entry asks for one
 * @param rung the ladder step, empty for an advice topic
 * @param layout layout name
 * @param paper {@code a4} or {@code letter}
 */
public record SheetOrder(
    Entry entry,
    String language,
    Optional<Side> side,
    Optional<Rung> rung,
    String layout,
    String paper) {

  /**
   * The side that is drawn and told first: the one answered, else the one poses are written for.
   */
  Side drawn() {
    return side.orElse(Side.RIGHT);
  }
}
