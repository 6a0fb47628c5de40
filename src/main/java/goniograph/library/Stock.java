package goniograph.library;

import goniograph.dose.Quantity;
import goniograph.dose.Range;
import goniograph.dose.StockTables;
import goniograph.dose.Unit;
import goniograph.matter.Located;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The clinic's stock, each table lightest or easiest first.
 *
 * @param bands resistance bands
 * @param weights masses
 * @param seats seat heights, the highest first
 * @param steps step heights
 */
public record Stock(
    List<Band> bands,
    List<Located<Quantity>> weights,
    List<Located<Quantity>> seats,
    List<Located<Quantity>> steps) {
  /** Nothing in stock. */
  public static final Stock NONE = new Stock(List.of(), List.of(), List.of(), List.of());

  public Stock {
    bands = List.copyOf(bands);
    weights = List.copyOf(weights);
    seats = List.copyOf(seats);
    steps = List.copyOf(steps);
  }

  /** The band with this id, or with this id as its latex-free twin. */
  public Optional<Band> band(String id) {
    return bands.stream()
        .filter(
            band ->
                band.id().value().equals(id)
                    || band.latexFree().filter(twin -> twin.value().equals(id)).isPresent())
        .findFirst();
  }

  /** The tables as a ladder climbs them. */
  public StockTables tables() {
    return new StockTables(
        bands.stream().map(Band::ids).toList(), plain(weights), plain(seats), plain(steps));
  }

  private static List<Quantity> plain(List<Located<Quantity>> table) {
    return table.stream().map(Located::value).toList();
  }

  /**
   * A resistance band.
   *
   * @param id its id, a phrase id too
   * @param latexFree id of its latex-free twin
   * @param forces measured forces at stated lengths, shortest first
   */
  public record Band(
      Located<String> id, Optional<Located<String>> latexFree, List<ForceAt> forces) {
    public Band {
      forces = List.copyOf(forces);
    }

    /** Its id, and that of its latex-free twin. */
    public List<String> ids() {
      return Stream.concat(Stream.of(id), latexFree.stream()).map(Located::value).toList();
    }

    /**
     * Its force when it is pulled out to a length, in newtons, to one decimal: in a straight line
     * between the two measured lengths beside it. Nothing outside the lengths that were measured.
     */
    public Optional<Quantity> forceAt(Quantity length) {
      for (int i = 0; i + 1 < forces.size(); i++) {
        Range<Quantity> part = Range.of(forces.get(i).length(), forces.get(i + 1).length());
        boolean apart = forces.get(i).length().compareTo(forces.get(i + 1).length()) < 0;
        if (apart && part.contains(length)) {
          return Optional.of(between(forces.get(i), forces.get(i + 1), length));
        }
      }
      return forces.stream()
          .filter(measured -> measured.length().compareTo(length) == 0)
          .map(ForceAt::force)
          .findFirst();
    }

    private static Quantity between(ForceAt low, ForceAt high, Quantity length) {
      BigDecimal from = low.length().inBase();
      BigDecimal rise = high.force().inBase().subtract(low.force().inBase());
      BigDecimal share =
          length
              .inBase()
              .subtract(from)
              .divide(high.length().inBase().subtract(from), MathContext.DECIMAL64);
      BigDecimal force = low.force().inBase().add(rise.multiply(share));
      return new Quantity(force.setScale(1, RoundingMode.HALF_UP), Unit.NEWTON);
    }
  }

  /** The force of a band pulled out to a length. */
  public record ForceAt(Quantity length, Quantity force) {}
}
