package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ProgrammeRule;
import goniograph.check.RulePage;
import goniograph.check.Words;
import goniograph.finding.Finding;
import goniograph.library.Programme;
import goniograph.library.ProgrammePlan;
import goniograph.library.ProgrammePlan.Slip;
import java.util.stream.Stream;

/** An entry of a programme that is not there, runs already, or does not run. */
public final class ProgrammeEntries implements ProgrammeRule {
  private static final RulePage PAGE =
      RulePage.of(
          "programme-entry",
          "A phase adds an entry that the library does not have or that runs already; it drops,"
              + " replaces or sets to a step one that does not run; or the ladder has no such step.",
          "The pack would have a sheet twice, or lack one that the plan counts on.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
                  ExampleFiles.PROGRAMME, "add: [hp-chair-rise, ad", "add: [«hp-chair-raise», ad")
              .insteadOf("add: [hp-chair-rise, ad")
              .alongside(ExampleFiles.PROGRAMME, ", steps: { hp-chair-rise: 2 }", ""),
          Example.in(
              ExampleFiles.PROGRAMME,
              "add: [ba-heel-toe-stand, sh-row-band]",
              "add: [ba-heel-toe-stand, «hp-chair-rise»]"),
          Example.in(
              ExampleFiles.PROGRAMME,
              "add: [ba-heel-toe-stand, sh-row-band]",
              "add: [ba-heel-toe-stand], drop: [«sh-row-band»]"),
          Example.in(
              ExampleFiles.PROGRAMME,
              "steps: { hp-chair-rise: 2 }",
              "steps: { hp-chair-rise: «9» }"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked) {
    return plan.slips().stream().map(this::finding);
  }

  private Finding finding(Slip slip) {
    String id = slip.id().value();
    return switch (slip.fault()) {
      case UNKNOWN ->
          error(
              slip.id().at(),
              References.what("exercise or advice topic", id, slip.others()),
              References.mend(id, slip.others(), "add the entry"));
      case RUNS_ALREADY ->
          error(
              slip.id().at(),
              "`" + id + "` runs already.",
              "Take it out here, or `drop` it in the phase before.");
      case DOES_NOT_RUN ->
          error(
              slip.id().at(),
              "`" + id + "` does not run in this phase.",
              "Take it out here, or `add` it first. Running: " + Words.listed(slip.others()) + ".");
      case NO_SUCH_STEP ->
          error(
              slip.id().at(),
              "The ladder of `" + id + "` has no such step.",
              "Write one of " + Words.listed(slip.others()) + ".");
    };
  }
}
