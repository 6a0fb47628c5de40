package goniograph.figure;

import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import goniograph.pose.Box;
import goniograph.pose.Mark;
import goniograph.pose.Moment;
import goniograph.pose.Scene;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A short arrow without a movement: where the author says, else against what the point touches. */
record Push(Scene scene, Moment moment, Mark.Arrow mark, Side side) {
  /** Something nearer than this is touched, in body heights. */
  private static final double TOUCHES = .06;

  /** How far the arrow reaches before and beyond the point, in body heights. */
  private static final double BEFORE = .05;

  private static final double BEYOND = .03;

  /** Its two ends; none where nothing tells a direction. */
  List<Vec> way() {
    Vec at = Tracked.point(moment.skeleton(), mark.part(), side);
    return direction(at)
        .map(d -> List.of(at.minus(d.times(BEFORE)), at.plus(d.times(BEYOND))))
        .orElse(List.of());
  }

  private Optional<Vec> direction(Vec at) {
    Skeleton s = moment.skeleton();
    Turn chest = s.spine(SpineJoint.T5).axes();
    return switch (mark.way()) {
      case UP -> Optional.of(Vec.UP);
      case DOWN -> Optional.of(Vec.UP.times(-1));
      case FORWARD -> Optional.of(chest.x());
      case BACK -> Optional.of(chest.x().times(-1));
      case OUTWARD -> Optional.of(chest.z().times(side.sign()));
      case INWARD -> Optional.of(chest.z().times(-side.sign()));
      case ALONG, BOTH_WAYS -> touched(at);
    };
  }

  /** Into the nearest face of a support. */
  private Optional<Vec> touched(Vec at) {
    return scene.supports().stream()
        .flatMap(support -> support.boxes().stream())
        .min(Comparator.comparingDouble(box -> toward(box, at).length()))
        .map(box -> toward(box, at))
        .filter(way -> way.length() < TOUCHES && way.length() > 0)
        .map(Vec::unit);
  }

  /** From a point to the nearest of a box. */
  private static Vec toward(Box box, Vec at) {
    Vec local = box.axes().invert(at.minus(box.centre()));
    Vec nearest =
        new Vec(
            clamped(local.x(), box.half().x()),
            clamped(local.y(), box.half().y()),
            clamped(local.z(), box.half().z()));
    return box.axes().apply(nearest.minus(local));
  }

  private static double clamped(double value, double half) {
    return Math.min(half, Math.max(-half, value));
  }
}
