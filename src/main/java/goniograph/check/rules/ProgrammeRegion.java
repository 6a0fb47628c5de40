package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ProgrammeRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.DoseLimit;
import goniograph.library.PlannedPhase;
import goniograph.library.PlannedPhase.Turn;
import goniograph.library.Programme;
import goniograph.library.ProgrammePlan;
import goniograph.library.Vocabulary.Region;
import goniograph.matter.Spellings;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A part of the body that a programme works too often on one day. */
public final class ProgrammeRegion implements ProgrammeRule {
  private static final RulePage PAGE =
      RulePage.of(
          "programme-region",
          "On one day more exercises work one region than a row for `region_entries` of the table"
              + " of limits allows, or more hard ones.",
          "A region that works in every exercise of the day does not rest between them.",
          "Each row of shared/rules/dose-limits.yaml names its own",
          Acceptance.SIGNED_TABLE,
          Example.in(
                  ExampleFiles.PROGRAMME,
                  "add: [ba-heel-toe-stand, sh-row-band]",
                  "add: [«ba-heel-toe-stand», sh-row-band]")
              .where(
                  ExampleFiles.LIMITS,
                  "field: region_entries, limit: ..4",
                  "field: region_entries, limit: ..1")
              .alongside(ExampleFiles.HEEL_TO_TOE, "region: [balance]", "region: [balance, hip]"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  /** The exercises of one region on one day. */
  private record Load(Region region, List<Turn> turns) {}

  @Override
  public Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked) {
    return checked.library().limits().stream()
        .filter(row -> row.field().value().equals(DoseLimit.REGION_ENTRIES))
        .flatMap(row -> plan.phases().stream().flatMap(phase -> phase(row, phase)));
  }

  private Stream<Finding> phase(DoseLimit row, PlannedPhase phase) {
    return Arrays.stream(Region.values())
        .map(region -> fullest(region, row, phase))
        .flatMap(load -> finding(load, row));
  }

  private static Load fullest(Region region, DoseLimit row, PlannedPhase phase) {
    return phase.week(DayOfWeek.MONDAY).values().stream()
        .map(day -> new Load(region, works(region, row, day)))
        .max(Comparator.comparing(load -> load.turns().size()))
        .orElseThrow();
  }

  private static List<Turn> works(Region region, DoseLimit row, List<Turn> day) {
    return day.stream()
        .filter(turn -> row.covers(turn.exercise(), turn.rung()))
        .filter(turn -> turn.exercise().region().stream().anyMatch(one -> one.value() == region))
        .toList();
  }

  private Stream<Finding> finding(Load load, DoseLimit row) {
    int size = load.turns().size();
    return Bounds.of(row.limit().value())
        .passed(BigDecimal.valueOf(size))
        .filter(passed -> !passed.below())
        .stream()
        .map(
            passed ->
                error(
                        load.turns().get(size - 1).named(),
                        size
                            + " exercises work the "
                            + Spellings.word(load.region())
                            + " on one day; "
                            + (LimitWords.scope(row.scope()) + " ").stripLeading()
                            + passed.words()
                            + " are allowed.",
                        "Drop one, or begin it in a later phase.")
                    .withBecause(ids(load.turns()))
                    .withSource(row.source().value()));
  }

  private static String ids(List<Turn> turns) {
    return turns.stream().map(turn -> turn.exercise().id()).collect(Collectors.joining(", "));
  }
}
