package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.RulePage;
import goniograph.check.RungRule;
import goniograph.check.Words;
import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Type;
import goniograph.matter.Spellings;
import goniograph.source.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A repetition that is both held and moved, or the one where the other is meant. */
public final class HoldOrTempo implements RungRule {
  private static final Set<Type> HELD = Set.of(Type.ISOMETRIC, Type.STRETCH);
  private static final Set<Type> MOVED = Set.of(Type.DYNAMIC, Type.FUNCTIONAL);
  private static final Set<String> UNLOADED = Set.of("none");

  private static final RulePage PAGE =
      RulePage.of(
          "hold-or-tempo",
          "A step has both `hold` and `tempo`; or a stretch or still press has a `tempo`; or a"
              + " loaded movement has a `hold`. A pause in a movement is `tempo.pause`.",
          "The time of a repetition would be counted in two ways, and the sheet would say both.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(ExampleFiles.CHAIR_RISE, "  rest: 60 s\n", "  rest: 60 s\n  hold: «3 s»\n"),
          Example.in(
                  ExampleFiles.BAND,
                  "  tempo: { lift: 2 s, pause: 1 s, lower: 3 s }\n",
                  "  hold: «6 s»\n")
              .alongside(ExampleFiles.BAND, "Pause for {tempo.pause}.", "Pause.")
              .alongside(ExampleFiles.BAND, " Take {tempo.lower}.", "")
              .alongside(ExampleFiles.BAND_ARABIC, Example.Edit.WHOLE, ""));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Rung rung, Checked checked) {
    return problem(exercise.type().value(), rung.dose().dose()).stream()
        .map(problem -> finding(problem, rung));
  }

  /** What is wrong, how to mend it, and the fields it stands in. */
  private record Problem(String what, String mend, List<DoseField> fields) {}

  private static Optional<Problem> problem(Type type, Dose dose) {
    boolean held = dose.hold().isPresent();
    boolean moved = !dose.tempo().isEmpty();
    if (held && moved) {
      return Optional.of(
          new Problem(
              "`hold` and `tempo` stand side by side.",
              "Keep `tempo` for a movement, with the hold as `tempo.pause`; else keep `hold`.",
              List.of(DoseField.HOLD)));
    }
    if (moved && HELD.contains(type)) {
      return Optional.of(
          new Problem(
              "`" + Spellings.word(type) + "` is held still, and the dose has a `tempo`.",
              "Write `hold: 10 s` in its place, or another `type`.",
              List.of(DoseField.TEMPO_LIFT, DoseField.TEMPO_PAUSE, DoseField.TEMPO_LOWER)));
    }
    return held && MOVED.contains(type) && loaded(dose)
        ? Optional.of(
            new Problem(
                "A loaded movement has a `hold` and no `tempo`.",
                "Write `tempo: { lift: 2 s, pause: 1 s, lower: 3 s }` in its place.",
                List.of(DoseField.HOLD)))
        : Optional.empty();
  }

  private static boolean loaded(Dose dose) {
    return dose.word(DoseField.LOAD_KIND).filter(kind -> !UNLOADED.contains(kind)).isPresent();
  }

  private Finding finding(Problem problem, Rung rung) {
    Span at =
        problem.fields().stream()
            .flatMap(field -> rung.dose().at(field).stream())
            .findFirst()
            .orElse(rung.at());
    return error(at, problem.what(), problem.mend())
        .withBecause(Words.onStep(rung.n(), problem.fields().get(0).key()));
  }
}
