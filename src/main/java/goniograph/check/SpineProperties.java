package goniograph.check;

import goniograph.body.AgeGroup;
import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.MotionRange;
import goniograph.body.Movement;
import goniograph.body.RangeOfMotion;
import goniograph.pose.MomentFacts;
import goniograph.pose.SceneFacts;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** How the spine bends and turns, with and without a load. */
final class SpineProperties {
  private SpineProperties() {}

  /**
   * Flexion or turn of the lumbar and thoracic spine over the limit with a load, or near the end of
   * its range without; or a trunk that leans far with a load.
   */
  static Optional<Reason> bentOrTurned(OnStep step, Limits limits) {
    Optional<Reason> load = LoadProperties.loaded(step);
    return step.pose()
        .map(pose -> pose.facts())
        .flatMap(
            facts ->
                load.isPresent()
                    ? loaded(facts, limits).map(shown -> with(shown, load.get()))
                    : nearTheEnd(facts, Ages.of(step.exercise()), limits));
  }

  private static Reason with(Reason shown, Reason load) {
    return new Reason(shown.words() + ", with " + load.words(), load.at());
  }

  private static Optional<Reason> loaded(SceneFacts facts, Limits limits) {
    return bent(facts, "flexion", MomentFacts::spineFlexionDegrees, limits)
        .or(() -> bent(facts, "turn", SpineProperties::turn, limits))
        .or(
            () ->
                PoseReasons.most(facts, MomentFacts::leanDegrees)
                    .filter(moment -> limits.passed("lean", moment.leanDegrees()))
                    .map(PositionProperties::leans));
  }

  private static Optional<Reason> bent(
      SceneFacts facts, String name, ToDoubleFunction<MomentFacts> measure, Limits limits) {
    return PoseReasons.most(facts, measure)
        .filter(moment -> limits.passed(name, measure.applyAsDouble(moment)))
        .map(
            moment ->
                PoseReasons.shown(
                    moment,
                    "the spine's "
                        + name
                        + " is "
                        + Math.round(measure.applyAsDouble(moment))
                        + " deg"));
  }

  private static double turn(MomentFacts moment) {
    return Math.abs(
        moment.angles().get(Joint.LUMBAR, Movement.TURN)
            + moment.angles().get(Joint.THORACIC, Movement.TURN));
  }

  /**
   * Over the limit in all, and one region within the margin of the end of its range: the norm of
   * the age, or where none is published the hard limit.
   */
  private static Optional<Reason> nearTheEnd(SceneFacts facts, AgeGroup age, Limits limits) {
    return Stream.of(
            end(facts, "flexion", MomentFacts::spineFlexionDegrees, Movement.FLEXION, age, limits),
            end(facts, "turn", SpineProperties::turn, Movement.TURN, age, limits))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Reason> end(
      SceneFacts facts,
      String name,
      ToDoubleFunction<MomentFacts> measure,
      Movement movement,
      AgeGroup age,
      Limits limits) {
    double room =
        Stream.of(Joint.LUMBAR, Joint.THORACIC)
            .map(joint -> Freedom.of(joint, movement))
            .mapToDouble(freedom -> room(facts, freedom, age))
            .min()
            .orElse(Double.MAX_VALUE);
    return limits
        .get("near_end")
        .filter(margin -> Math.round(room) <= margin.doubleValue())
        .flatMap(margin -> bent(facts, name, measure, limits))
        .map(shown -> new Reason(shown.words() + ", near the end of its range", shown.at()));
  }

  /** How many degrees are left to the end of the range that is bent or turned towards. */
  private static double room(SceneFacts facts, Freedom freedom, AgeGroup age) {
    Optional<MotionRange> range =
        RangeOfMotion.norm(freedom, age, false).or(() -> RangeOfMotion.hard(freedom, false));
    boolean bothWays = freedom.movement() == Movement.TURN;
    return facts
        .extreme(freedom)
        .flatMap(
            extreme ->
                range.map(
                    end ->
                        Math.min(
                            end.high() - extreme.high(),
                            bothWays ? extreme.low() - end.low() : Double.MAX_VALUE)))
        .orElse(Double.MAX_VALUE);
  }
}
