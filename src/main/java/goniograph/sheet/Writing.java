package goniograph.sheet;

import java.util.List;

/**
 * Lines to write on.
 *
 * @param finishBy label of the date line
 * @param ticks lines to tick, for instance "shown and done today"
 * @param mine labels of "my chair", "my band"
 * @param note label of the therapist's lines
 */
public record Writing(String finishBy, List<TickLine> ticks, List<String> mine, String note) {
  public Writing {
    ticks = List.copyOf(ticks);
    mine = List.copyOf(mine);
  }
}
