package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ProgrammeRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.PlannedPhase;
import goniograph.library.PlannedPhase.Turn;
import goniograph.library.Programme;
import goniograph.library.ProgrammePlan;
import java.util.stream.Stream;

/** An exercise beside the one that takes its place where it is too hard. */
public final class ProgrammeEasier implements ProgrammeRule {
  private static final RulePage PAGE =
      RulePage.of(
          "programme-easier-version",
          "Two exercises run at once, of which one takes the place of the other for patients with"
              + " some tag (`swap`).",
          "The same work is done twice, at two levels, and the patient asks which counts.",
          RulePage.PRACTICE,
          Acceptance.CLINICIAN,
          Example.in(
                  ExampleFiles.PROGRAMME,
                  "add: [ba-heel-toe-stand, sh-row-band]",
                  "add: [ba-heel-toe-stand, «sh-row-band»]")
              .alongside(
                  ExampleFiles.CHAIR_RISE,
                  "limits: { seat_height: 55.. cm } }",
                  "swap: { hp-chair-rise: sh-row-band } }"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked) {
    return plan.phases().stream().flatMap(this::phase);
  }

  private Stream<Finding> phase(PlannedPhase phase) {
    return phase.turns().stream()
        .flatMap(
            easier ->
                phase.turns().stream()
                    .filter(harder -> takesThePlace(easier.exercise(), harder.exercise()))
                    .map(harder -> finding(easier, harder)));
  }

  private static boolean takesThePlace(Exercise easier, Exercise harder) {
    return harder.precautions().stream()
        .flatMap(one -> one.swaps().stream())
        .anyMatch(
            swap ->
                swap.from().value().equals(harder.id()) && swap.to().value().equals(easier.id()));
  }

  private Finding finding(Turn easier, Turn harder) {
    String id = easier.exercise().id();
    String other = harder.exercise().id();
    return warning(
            easier.named(),
            "`" + id + "` takes the place of `" + other + "` where that is too hard.",
            "Keep one of the two, or let one `replace` the other in a later phase.")
        .withBecause("precautions of " + other);
  }
}
