package goniograph.check.rules;

import goniograph.check.Acceptance;
import goniograph.check.Checked;
import goniograph.check.Example;
import goniograph.check.ExerciseRule;
import goniograph.check.RulePage;
import goniograph.finding.Finding;
import goniograph.library.Exercise;
import goniograph.library.Precaution;
import goniograph.library.Vocabulary.Action;
import goniograph.matter.Spellings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A precaution that does not say what is done. */
public final class PrecautionUnclear implements ExerciseRule {
  private static final RulePage PAGE =
      RulePage.of(
          "precaution-unclear",
          "A precaution adapts or advises and says neither limits nor swap nor statement; or leaves"
              + " out and says them all the same; or names a tag a second time.",
          "The therapist would read that something is done, and nothing is.",
          RulePage.HOUSE,
          Acceptance.NOBODY,
          Example.in(
              ExampleFiles.CHAIR_RISE,
              "precautions:\n  - { tag: hip-replacement-precautions, action: adapt, limits:"
                  + " { seat_height: 55.. cm } }\n",
              "precautions:\n  - { tag: blood-thinners, action: «adapt» }\n"),
          Example.in(
              ExampleFiles.HEEL_TO_TOE,
              "{ tag: dizziness, action: leave-out }",
              "{ tag: dizziness, action: «leave-out», statement: s-dizzy-stop }"),
          Example.in(
              ExampleFiles.HEEL_TO_TOE,
              "  - { tag: dizziness, action: leave-out }\n",
              "  - { tag: dizziness, action: leave-out }\n"
                  + "  - { tag: «dizziness», action: leave-out }\n"));

  @Override
  public RulePage page() {
    return PAGE;
  }

  @Override
  public Stream<Finding> check(Exercise exercise, Checked checked) {
    List<Finding> findings = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Precaution own : exercise.precautions()) {
      if (!seen.add(own.tag().value())) {
        findings.add(
            error(
                own.tag().at(),
                "`" + own.tag().value() + "` stands twice in `precautions`.",
                "Keep one line that says all."));
      } else {
        unclear(own).ifPresent(findings::add);
      }
    }
    return checked.readWell(exercise) ? findings.stream() : Stream.empty();
  }

  private Optional<Finding> unclear(Precaution own) {
    boolean says = own.saysHow() || own.statement().isPresent();
    String action = Spellings.word(own.action().value());
    if (own.action().value() == Action.LEAVE_OUT) {
      return says
          ? Optional.of(
              error(
                  own.action().at(),
                  "`leave-out` with limits, swap or statement: they would do nothing.",
                  "Write `action: adapt`, or take them out."))
          : Optional.empty();
    }
    return says
        ? Optional.empty()
        : Optional.of(
            error(
                own.action().at(),
                "`" + action + "` does not say what is done.",
                "Add `limits: { … }`, `swap: { … }` or `statement: …`, or write `action:"
                    + " leave-out`."));
  }
}
