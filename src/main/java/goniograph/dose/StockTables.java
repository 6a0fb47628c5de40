package goniograph.dose;

import java.util.List;

/**
 * What a clinic can hand out, each table easiest first, so that a ladder may go to the next item.
 *
 * @param bands ids of each band, weakest first: its own, then those of its twins
 * @param weights masses, rising
 * @param seats seat heights, falling
 * @param steps step heights, rising
 */
public record StockTables(
    List<List<String>> bands, List<Quantity> weights, List<Quantity> seats, List<Quantity> steps) {
  /** Nothing in stock. */
  public static final StockTables NONE =
      new StockTables(List.of(), List.of(), List.of(), List.of());

  public StockTables {
    bands = bands.stream().map(List::copyOf).toList();
    weights = List.copyOf(weights);
    seats = List.copyOf(seats);
    steps = List.copyOf(steps);
  }
}
