package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ProgrammeRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Clinic;
import goniograph.library.PlannedPhase;
import goniograph.library.Programme;
import goniograph.library.ProgrammePlan;
import goniograph.source.Span;
import java.util.Comparator;
import java.util.stream.Stream;

/** A programme with more exercises than people do well. */
public final class ProgrammeSize implements ProgrammeRule {
  private static final RulePage PAGE =
      RulePage.of(
          "programme-size",
          "A phase has more exercises than the clinic's setting `entries_ask_above`: a warning; more"
              + " than `entries_max`: an error. Advice topics do not count.",
          "Few exercises are done better than many.",
          "Henry 1999, Physical Therapy 79: 15 people of 67 to 82 years did 2 exercises better than"
              + " 8; a small trial",
          Acceptance.CLINICIAN,
          Example.in(ExampleFiles.PROGRAMME, "weeks: 3..8,", "weeks: «3..8»,")
              .alongside(ExampleFiles.CLINIC, "entries_ask_above: 4", "entries_ask_above: 2"),
          Example.in(ExampleFiles.PROGRAMME, "weeks: 3..8,", "weeks: «3..8»,")
              .alongside(ExampleFiles.CLINIC, "entries_max: 6", "entries_max: 2"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked) {
    Clinic.Settings settings = Settings.of(checked);
    int most = Math.min(settings.entriesAskAbove(), settings.entriesMax());
    return plan.phases().stream()
        .max(Comparator.comparing(phase -> phase.turns().size()))
        .filter(phase -> phase.turns().size() > most)
        .map(phase -> finding(phase, settings))
        .stream();
  }

  private Finding finding(PlannedPhase phase, Clinic.Settings settings) {
    int size = phase.turns().size();
    Span at = phase.phase().weeks().at();
    return size > settings.entriesMax()
        ? error(
            at,
            size + " exercises at once; the clinic gives " + settings.entriesMax() + " at most.",
            "Drop some, or begin them in a later phase.")
        : warning(
            at,
            size + " exercises at once; above " + settings.entriesAskAbove() + " the clinic asks.",
            "Which would you drop? Begin it in a later phase, or leave it out.");
  }
}
