package goniograph.library;

import goniograph.dose.Quantity;
import goniograph.matter.Located;
import java.util.List;
import java.util.Optional;

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
  }

  /** The force of a band pulled out to a length. */
  public record ForceAt(Quantity length, Quantity force) {}
}
