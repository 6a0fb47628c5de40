package goniograph.check;

import goniograph.dose.DoseField;
import goniograph.library.Vocabulary.Type;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** How hard a step is, and how long something is held. */
final class EffortProperties {
  private static final Set<Type> HELD_WITHOUT_EFFORT =
      Set.of(Type.STRETCH, Type.BALANCE, Type.BREATHING);

  private EffortProperties() {}

  static Optional<Reason> heldEffort(OnStep step, Limits limits) {
    Optional<Reason> held =
        step.type() == Type.STRETCH
            ? held(step, DoseField.HOLD, limits, "stretch_hold")
            : isometricHold(step, limits);
    return held.or(() -> effort(step, limits));
  }

  /** Any hold outside stretch, balance and breathing; a tempo's pause is one. */
  static Optional<Reason> isometricHold(OnStep step, Limits limits) {
    return HELD_WITHOUT_EFFORT.contains(step.type())
        ? Optional.empty()
        : Stream.of(DoseField.HOLD, DoseField.TEMPO_PAUSE)
            .flatMap(field -> held(step, field, limits, "isometric_hold").stream())
            .findFirst();
  }

  private static Optional<Reason> held(OnStep step, DoseField field, Limits limits, String limit) {
    return step.dose()
        .amount(field)
        .filter(time -> limits.reached(limit, time.inBase()))
        .flatMap(time -> step.given(field));
  }

  static Optional<Reason> effort(OnStep step, Limits limits) {
    return step.topEffort().stream()
        .boxed()
        .filter(top -> limits.reached("effort", BigDecimal.valueOf(top)))
        .map(top -> step.reason(DoseField.EFFORT, "effort up to " + top))
        .findFirst();
  }

  static Optional<Reason> aerobic(OnStep step) {
    return OnStep.field("type", Optional.of(step.exercise().type()), List.of(Type.AEROBIC));
  }

  static Optional<Reason> hardWork(OnStep step, Limits limits) {
    return aerobic(step).or(() -> effort(step, limits)).or(() -> PositionProperties.stepping(step));
  }
}
