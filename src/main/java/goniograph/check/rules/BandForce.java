package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.dose.Dose;
import goniograph.dose.DoseArithmetic;
import goniograph.dose.DoseField;
import goniograph.dose.Quantity;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Stock;
import java.util.Optional;
import java.util.stream.Stream;

/** A band that is pulled out to a length at which nobody has measured it. */
public final class BandForce implements RungRule {
  private static final RulePage PAGE =
      RulePage.of(
          "band-force",
          "`load.length_end` is outside the lengths at which the clinic has measured the band: a"
              + " warning. A `load.force` that differs by more than 10 % from the one measured: an"
              + " error.",
          "Bands of one colour differ from maker to maker; only the measured force is a dose.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          Example.in(ExampleFiles.BAND, "length_end: 160 cm", "length_end: «170 cm»"),
          Example.in(
                  ExampleFiles.BAND,
                  "band-medium, load.force: 23 N, stay_at_least: 14 d",
                  "band-medium, load.force: «40 N», stay_at_least: 14 d")
              .insteadOf("band-medium, stay_at_least: 14 d"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    Dose dose = rung.dose().dose();
    Optional<Stock.Band> band =
        dose.word(DoseField.LOAD_BAND).flatMap(checked.library().stock()::band);
    return dose.amount(DoseField.LENGTH_END).stream()
        .flatMap(length -> band.stream().flatMap(one -> finding(one, length, rung).stream()));
  }

  private Optional<Finding> finding(Stock.Band band, Quantity length, Rung rung) {
    Optional<Quantity> measured = band.forceAt(length);
    if (measured.isEmpty()) {
      return Optional.of(unmeasured(band, length, rung));
    }
    return rung.dose()
        .dose()
        .amount(DoseField.LOAD_FORCE)
        .filter(said -> !DoseArithmetic.agree(said.inBase(), measured.get().inBase()))
        .map(said -> differs(band, said, measured.get(), rung));
  }

  private Finding unmeasured(Stock.Band band, Quantity length, Rung rung) {
    return warning(
            rung.dose().at(DoseField.LENGTH_END).orElse(rung.at()),
            "`" + band.id().value() + "` has no measured force at " + length + ".",
            "Write a length that is measured, or measure it and add it to `shared/bands.yaml`.")
        .withBecause(Words.onStep(rung.n(), "load.band " + band.id().value()));
  }

  private Finding differs(Stock.Band band, Quantity said, Quantity measured, Rung rung) {
    return error(
            rung.dose().at(DoseField.LOAD_FORCE).orElse(rung.at()),
            "`load.force` says " + said + "; `" + band.id().value() + "` pulls " + measured + ".",
            "Take `load.force` out, or write " + measured + ".")
        .withBecause(Words.onStep(rung.n(), "load.band " + band.id().value()));
  }
}
