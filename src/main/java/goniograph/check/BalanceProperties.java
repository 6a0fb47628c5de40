package goniograph.check;

import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.dose.DoseField;
import goniograph.library.Vocabulary.Stance;
import goniograph.library.Vocabulary.Surface;
import goniograph.library.Vocabulary.Vision;
import goniograph.matter.Located;
import goniograph.pose.FootState;
import goniograph.pose.MomentFacts;
import goniograph.pose.SceneFacts;
import goniograph.pose.Solved;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What makes standing unsteady, and balance harder. */
final class BalanceProperties {
  private static final Set<Stance> UNSTEADY = Set.of(Stance.NARROW, Stance.TANDEM, Stance.ONE_LEG);
  private static final Set<String> ONE_LEG = Set.of("one-leg", "up-two-down-one");
  private static final List<Movement> OF_THE_HEAD =
      List.of(Movement.TURN, Movement.BEND, Movement.FLEXION);

  private BalanceProperties() {}

  static Optional<Reason> unsteady(OnStep step) {
    return step.onTheFeet()
        ? OnStep.field("stance", step.conditions().stance(), UNSTEADY)
            .or(() -> oneLeg(step))
            .or(() -> step.pose().map(Solved::facts).flatMap(BalanceProperties::unsteadyFeet))
            .or(() -> PositionProperties.stepping(step))
            .or(() -> step.texts().cue("one-leg"))
            .or(() -> step.texts().cue("tiptoe"))
        : Optional.empty();
  }

  private static Optional<Reason> oneLeg(OnStep step) {
    return step.dose()
        .word(DoseField.LOAD_LEGS)
        .filter(ONE_LEG::contains)
        .flatMap(word -> step.given(DoseField.LOAD_LEGS));
  }

  private static Optional<Reason> unsteadyFeet(SceneFacts facts) {
    return first(facts, moment -> moment.bears(Side.LEFT) != moment.bears(Side.RIGHT))
        .map(moment -> PoseReasons.shown(moment, "one foot is off the floor"))
        .or(
            () ->
                first(facts, moment -> moment.feet().containsValue(FootState.HEEL_RAISED))
                    .map(moment -> PoseReasons.shown(moment, "a heel is raised")));
  }

  private static Optional<MomentFacts> first(SceneFacts facts, Predicate<MomentFacts> is) {
    return facts.all().stream().filter(is).findFirst();
  }

  static Optional<Reason> harderBalance(OnStep step, Limits limits) {
    return step.onTheFeet()
        ? visionClosed(step)
            .or(() -> OnStep.field("surface", step.conditions().surface(), Set.of(Surface.SOFT)))
            .or(() -> step.texts().cue("soft-surface"))
            .or(() -> headMovement(step, limits))
            .or(() -> withoutHands(step))
        : Optional.empty();
  }

  static Optional<Reason> visionClosed(OnStep step) {
    return OnStep.field("vision", step.conditions().vision(), Set.of(Vision.CLOSED))
        .or(() -> step.texts().cue("eyes-closed"));
  }

  private static Optional<Reason> headMovement(OnStep step, Limits limits) {
    return step.conditions()
        .headMovement()
        .filter(Located::value)
        .map(given -> Reason.at("head_movement true", given.at()))
        .or(() -> step.texts().cue("head-moves"))
        .or(() -> step.pose().flatMap(pose -> headMoves(pose.facts(), limits)));
  }

  /** How far head and neck together move on the trunk, from the first moment to any other. */
  private static Optional<Reason> headMoves(SceneFacts facts, Limits limits) {
    return OF_THE_HEAD.stream()
        .flatMap(
            movement -> {
              double least =
                  facts.all().stream().mapToDouble(m -> head(m, movement)).min().orElse(0);
              return PoseReasons.most(facts, m -> head(m, movement)).stream()
                  .filter(m -> limits.reached("head", head(m, movement) - least))
                  .map(m -> moves(m, head(m, movement) - least));
            })
        .findFirst();
  }

  private static Reason moves(MomentFacts moment, double degrees) {
    return PoseReasons.shown(moment, "the head has moved " + Math.round(degrees) + " deg");
  }

  private static double head(MomentFacts moment, Movement movement) {
    return Stream.of(Joint.NECK, Joint.HEAD)
        .mapToDouble(joint -> moment.angles().get(joint, movement))
        .sum();
  }

  /** Letting go makes it harder only where there is something to let go of. */
  private static Optional<Reason> withoutHands(OnStep step) {
    boolean holds = step.conditions().support().object().isPresent() || unsteady(step).isPresent();
    return holds ? step.texts().cue("without-hands") : Optional.empty();
  }
}
