package goniograph.sheet;

import goniograph.dose.Decider;
import goniograph.dose.Dose;
import goniograph.dose.DoseField;
import goniograph.dose.Sides;
import goniograph.library.Exercise;
import goniograph.library.LocatedLadder;
import goniograph.library.Rung;
import goniograph.library.Vocabulary.Supervision;
import goniograph.matter.Spellings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The ladder in words: numbers of each rung, and what else changes from the rung below. */
record LadderWords(Wording wording, Exercise exercise) {

  /** The ladder with the rung of today marked; nothing without a ladder. */
  Optional<LadderPicture> picture(int today) {
    return exercise.ladder().map(ladder -> picture(ladder, today));
  }

  private LadderPicture picture(LocatedLadder ladder, int today) {
    List<LadderPicture.Rung> rungs = new ArrayList<>();
    List<Rung> steps = exercise.rungs();
    for (int i = 0; i < steps.size(); i++) {
      Rung step = steps.get(i);
      Optional<Rung> below = i == 0 ? Optional.empty() : Optional.of(steps.get(i - 1));
      boolean therapist =
          ladder.steps().get(i).step().whoDecides().equals(Optional.of(Decider.THERAPIST));
      rungs.add(
          new LadderPicture.Rung(
              dose(step.dose().dose()),
              more(step, below, therapist),
              step.n() == today ? wording.say("label.today") : ""));
    }
    Collections.reverse(rungs);
    return new LadderPicture(wording.say("label.ladder"), rungs);
  }

  private String dose(Dose dose) {
    int reps = dose.reps().orElse(0);
    int sets = dose.sets().orElse(1);
    if (dose.hold().isPresent()) {
      return wording.say("rung.hold", Map.of("n", dose.hold().get().inBase()));
    }
    if (exercise.sides().value().mode() == Sides.Mode.EACH_IN_TURN) {
      return wording.say("rung.reps-side", Map.of("n", reps));
    }
    return String.join(" + ", Collections.nCopies(sets, wording.number(reps)));
  }

  private String more(Rung step, Optional<Rung> below, boolean therapist) {
    List<String> words = new ArrayList<>();
    holdReps(step, below).ifPresent(words::add);
    load(step, below).ifPresent(words::add);
    height(step, below, DoseField.SEAT_HEIGHT, "rung.seat").ifPresent(words::add);
    height(step, below, DoseField.STEP_HEIGHT, "rung.step").ifPresent(words::add);
    support(step, below).ifPresent(words::add);
    if (headMoves(step) && !below.map(LadderWords::headMoves).orElse(false)) {
      words.add(wording.say("rung.head-movement"));
    }
    if (helper(step) && !below.map(LadderWords::helper).orElse(false)) {
      words.add(wording.say("rung.helper-near"));
    }
    if (therapist) {
      words.add(wording.say("rung.therapist"));
    }
    return words.stream()
        .reduce((first, then) -> wording.say("rung.more", Map.of("first", first, "then", then)))
        .orElse("");
  }

  private Optional<String> holdReps(Rung step, Optional<Rung> below) {
    Dose dose = step.dose().dose();
    if (dose.hold().isEmpty() || dose.reps().isEmpty()) {
      return Optional.empty();
    }
    boolean same =
        below.map(b -> b.dose().dose().reps().equals(dose.reps())).orElse(!varies(DoseField.REPS));
    String id =
        exercise.sides().value().mode() == Sides.Mode.EACH_IN_TURN ? "rung.reps-side" : "rung.reps";
    return same
        ? Optional.empty()
        : Optional.of(wording.say(id, Map.of("n", dose.reps().getAsInt())));
  }

  private Optional<String> load(Rung step, Optional<Rung> below) {
    return changed(step, below, DoseField.LOAD_BAND)
        .flatMap(field -> step.dose().dose().word(field))
        .map(band -> wording.say("load." + band))
        .or(
            () ->
                changed(step, below, DoseField.LOAD_MASS)
                    .flatMap(field -> step.dose().dose().amount(field))
                    .map(wording::amount));
  }

  private Optional<String> height(Rung step, Optional<Rung> below, DoseField field, String id) {
    return changed(step, below, field)
        .flatMap(f -> step.dose().dose().amount(f))
        .map(height -> wording.say(id, Map.of("height", wording.amount(height))));
  }

  /** The field, if it varies over the ladder and is new on this rung. */
  private Optional<DoseField> changed(Rung step, Optional<Rung> below, DoseField field) {
    boolean same =
        below
            .map(b -> Objects.equals(b.dose().dose().get(field), step.dose().dose().get(field)))
            .orElse(!varies(field));
    return same ? Optional.empty() : Optional.of(field);
  }

  private boolean varies(DoseField field) {
    return exercise.rungs().stream().map(rung -> rung.dose().dose().get(field)).distinct().count()
        > 1;
  }

  private Optional<String> support(Rung step, Optional<Rung> below) {
    Optional<String> need = need(step);
    Optional<String> before = below.flatMap(LadderWords::need);
    long needs = exercise.rungs().stream().map(LadderWords::need).distinct().count();
    return needs < 2 || (below.isPresent() && before.equals(need))
        ? Optional.empty()
        : need.map(word -> wording.say("rung.support." + word));
  }

  private static Optional<String> need(Rung rung) {
    return rung.conditions().support().need().map(need -> Spellings.word(need.value()));
  }

  private static boolean headMoves(Rung rung) {
    return rung.conditions().headMovement().map(moves -> moves.value()).orElse(false);
  }

  private static boolean helper(Rung rung) {
    return rung.conditions()
        .supervision()
        .map(word -> word.value().compareTo(Supervision.HELPER_NEAR) >= 0)
        .orElse(false);
  }
}
