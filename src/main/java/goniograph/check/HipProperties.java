package goniograph.check;

import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.pose.BodyPlaces;
import goniograph.pose.Moment;
import goniograph.pose.MomentFacts;
import goniograph.pose.Scene;
import goniograph.pose.SceneFacts;
import goniograph.pose.Solved;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a hip with a new joint must not do. */
final class HipProperties {
  private HipProperties() {}

  /** Flexion that reaches the limit anywhere, or a knee or ankle that crosses the midline. */
  static Optional<Reason> pastLimit(OnStep step, Limits limits) {
    return step.pose()
        .flatMap(pose -> flexion(pose.facts(), limits).or(() -> crossing(pose, limits)));
  }

  private static Optional<Reason> flexion(SceneFacts facts, Limits limits) {
    return Stream.of(Side.values())
        .flatMap(
            side ->
                PoseReasons.most(facts, moment -> flexion(moment, side)).stream()
                    .filter(moment -> limits.reached("flexion", flexion(moment, side)))
                    .map(moment -> PoseReasons.shown(moment, bent(moment, side))))
        .findFirst();
  }

  private static String bent(MomentFacts moment, Side side) {
    return "hip " + word(side) + " flexion " + Math.round(flexion(moment, side)) + " deg";
  }

  private static double flexion(MomentFacts moment, Side side) {
    return moment.angles().get(Freedom.of(Joint.HIP, side, Movement.FLEXION));
  }

  private static Optional<Reason> crossing(Solved pose, Limits limits) {
    double most = limits.get("midline").map(limit -> limit.doubleValue()).orElse(Double.MAX_VALUE);
    return Stream.of(Side.values())
        .flatMap(
            side ->
                moments(pose.scene()).stream()
                    .filter(moment -> BodyPlaces.pastMidlineCm(moment.skeleton(), side) > most)
                    .map(moment -> crossed(moment, side)))
        .findFirst();
  }

  private static List<Moment> moments(Scene scene) {
    return Stream.concat(scene.keys().stream(), scene.motion().stream()).toList();
  }

  private static Reason crossed(Moment moment, Side side) {
    long cm = Math.round(BodyPlaces.pastMidlineCm(moment.skeleton(), side));
    return PoseReasons.shown(
        moment.name(), "the " + word(side) + " knee or ankle is " + cm + " cm past the midline");
  }

  private static String word(Side side) {
    return side.name().toLowerCase(Locale.ROOT);
  }
}
