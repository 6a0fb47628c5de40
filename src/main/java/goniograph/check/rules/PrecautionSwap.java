package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.dose.DoseField;
import goniograph.finding.Finding;
import goniograph.finding.Nearest;
import goniograph.library.Exercise;
import java.util.List;
import java.util.stream.Stream;

/** A swap for something that the entry does not use. */
public final class PrecautionSwap implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "precaution-swap",
          "`swap` names on its left something that the entry does not use: neither a piece of its"
              + " equipment, nor a band of its steps, nor the entry itself.",
          "Nothing would be swapped, and the patient would get what must be avoided.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.BAND,
              "swap: { band-light: band-light-latex-free,",
              "swap: { «firm-counter»: band-light-latex-free,"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    List<String> used = used(exercise);
    List<String> known = PhraseUnknown.things(checked.library());
    List<String> misspelt = used.stream().filter(id -> !known.contains(id)).toList();
    return exercise.precautions().stream()
        .flatMap(own -> own.swaps().stream())
        .map(swap -> swap.from())
        .filter(from -> !used.contains(from.value()) && known.contains(from.value()))
        .filter(from -> Nearest.of(from.value(), misspelt).isEmpty())
        .map(
            from ->
                error(
                    from.at(),
                    "The entry does not use `" + from.value() + "`.",
                    "Swap one of `" + String.join("`, `", used) + "`."));
  }

  private static List<String> used(Exercise exercise) {
    Stream<String> things =
        exercise.equipment().stream()
            .flatMap(one -> Stream.concat(Stream.of(one.id()), one.instead().stream()))
            .map(id -> id.value());
    Stream<String> bands =
        exercise.rungs().stream()
            .flatMap(rung -> rung.dose().dose().word(DoseField.LOAD_BAND).stream());
    return Stream.of(things, bands, Stream.of(exercise.id()))
        .flatMap(all -> all)
        .distinct()
        .toList();
  }
}
