package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.dose.DoseField;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Stock;
import goniograph.matter.Located;
import goniograph.source.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A band that is not in the clinic's stock. */
public final class BandUnknown implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "band-unknown",
          "`load.band` names a band that the clinic's stock table does not have; the nearest is"
              + " offered.",
          "Its force cannot be worked out, and nobody can hand it out.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.BAND,
              "sets: 3, reps: 8, load.band: band-medium,",
              "sets: 3, reps: 8, load.band: «band-meduim»,"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    Stock stock = checked.library().stock();
    List<String> known =
        stock.bands().stream()
            .flatMap(
                band ->
                    Stream.concat(
                        Stream.of(band.id().value()),
                        band.latexFree().stream().map(twin -> twin.value())))
            .toList();
    Optional<String> band =
        rung.dose().dose().word(DoseField.LOAD_BAND).filter(id -> stock.band(id).isEmpty());
    Span at = rung.dose().at(DoseField.LOAD_BAND).orElse(rung.at());
    return References.unknown(
        this,
        band.stream().map(id -> new Located<>(id, at)),
        "band",
        known,
        "add it to `shared/bands.yaml`");
  }
}
