package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ProgrammeRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.PlannedPhase.Turn;
import goniograph.library.Precaution;
import goniograph.library.Programme;
import goniograph.library.ProgrammePlan;
import goniograph.library.Vocabulary.Action;
import goniograph.matter.Located;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A programme for patients with a tag, and an entry that is not for them. */
public final class ProgrammeTags implements ProgrammeRule {
  private static final String LADDER_MAX = "ladder_max";

  private static final RulePage PAGE =
      RulePage.of(
          "programme-tag",
          "A programme is `for` patients with a tag, and an exercise in it leaves them out, has"
              + " another entry take its place, or runs on a step beyond the limits that it keeps"
              + " for them.",
          "Whoever trusts the name of the programme gives just those patients the wrong exercise.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
                  ExampleFiles.PROGRAMME,
                  "add: [ba-heel-toe-stand, sh-row-band]",
                  "add: [«ba-heel-toe-stand», sh-row-band]")
              .alongside(ExampleFiles.PROGRAMME, "for: [falls-last-year]", "for: [dizziness]"),
          Example.in(
              ExampleFiles.PROGRAMME,
              "add: [ba-heel-toe-stand, sh-row-band], steps: { hp-chair-rise: 2 }",
              "add: [«ba-heel-toe-stand», sh-row-band],"
                  + " steps: { hp-chair-rise: 2, ba-heel-toe-stand: 3 }"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Programme programme, ProgrammePlan plan, Checked checked) {
    List<String> tags = programme.forTags().stream().map(Located::value).toList();
    return plan.phases().stream()
        .flatMap(phase -> phase.turns().stream())
        .flatMap(
            turn ->
                turn.exercise().precautions().stream()
                    .filter(precaution -> tags.contains(precaution.tag().value()))
                    .flatMap(precaution -> finding(precaution, turn).stream()));
  }

  private Optional<Finding> finding(Precaution precaution, Turn turn) {
    return problem(precaution, turn)
        .map(
            problem ->
                error(
                        turn.named(),
                        "`" + turn.exercise().id() + "` " + problem + ".",
                        "Leave it out of this programme, choose a lower step, or take the tag out"
                            + " of `for`.")
                    .withBecause("for " + precaution.tag().value()));
  }

  private static Optional<String> problem(Precaution precaution, Turn turn) {
    String tag = "`" + precaution.tag().value() + "`";
    if (precaution.action().value() == Action.LEAVE_OUT) {
      return Optional.of("is left out for " + tag);
    }
    String id = turn.exercise().id();
    Optional<String> instead =
        precaution.swaps().stream()
            .filter(swap -> swap.from().value().equals(id))
            .map(swap -> "is replaced by `" + swap.to().value() + "` for " + tag)
            .findFirst();
    return instead.or(() -> beyond(precaution, turn).map(limits -> limits + " for " + tag));
  }

  private static Optional<String> beyond(Precaution precaution, Turn turn) {
    String limits =
        precaution.limits().stream()
            .flatMap(limit -> beyond(limit, turn).stream())
            .collect(Collectors.joining(", "));
    return limits.isEmpty()
        ? Optional.empty()
        : Optional.of("runs on step " + turn.rung().n() + ", beyond " + limits);
  }

  private static Optional<String> beyond(Precaution.Limit limit, Turn turn) {
    String field = limit.field().value();
    Optional<BigDecimal> value =
        field.equals(LADDER_MAX)
            ? Optional.of(BigDecimal.valueOf(turn.rung().n()))
            : LimitedValue.of(field, turn.exercise(), turn.rung()).flatMap(LimitedValue::number);
    return value
        .flatMap(number -> Bounds.of(limit.within().value()).passed(number))
        .filter(passed -> !passed.below() || !field.equals(LADDER_MAX))
        .map(passed -> "`" + field + "` " + passed.words());
  }
}
