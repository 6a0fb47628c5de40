package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ProgrammeRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Programme;
import goniograph.library.Programme.Phase;
import goniograph.library.Programme.Weeks;
import goniograph.library.ProgrammePlan;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Weeks of a programme that no phase has, or two. */
public final class ProgrammePhases implements ProgrammeRule {
  private static final RulePage PAGE =
      RulePage.of(
          "programme-phase-weeks",
          "The first phase does not begin in week 1, or a phase does not begin in the week after"
              + " the one before it ends.",
          "In some weeks nobody could say what to do, or two plans would hold at once.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.PROGRAMME, "weeks: 3..8,", "weeks: «4..8»,"),
          Example.in(ExampleFiles.PROGRAMME, "weeks: 3..8,", "weeks: «2..8»,"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked) {
    List<Phase> phases = programme.phases();
    return IntStream.range(0, phases.size())
        .boxed()
        .flatMap(
            i -> finding(i == 0 ? 0 : weeks(phases.get(i - 1)).last(), phases.get(i)).stream());
  }

  private static Weeks weeks(Phase phase) {
    return phase.weeks().value();
  }

  /** The finding about a phase that follows a last week, 0 for the first. */
  private Optional<Finding> finding(int last, Phase phase) {
    Weeks weeks = weeks(phase);
    if (weeks.first() == last + 1) {
      return Optional.empty();
    }
    String before = last == 0 ? "The programme begins" : "The phase before ends in week " + last;
    String what =
        weeks.first() > last
            ? before + ", this one begins in week " + weeks.first() + ": nothing between."
            : before + ", this one begins in week " + weeks.first() + ": both at once.";
    int length = weeks.last() - weeks.first();
    return Optional.of(
        error(
            phase.weeks().at(),
            what,
            "Write `weeks: "
                + (last + 1)
                + ".."
                + Math.max(weeks.last(), last + 1 + length)
                + "`."));
  }
}
