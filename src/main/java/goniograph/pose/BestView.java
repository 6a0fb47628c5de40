package goniograph.pose;

import goniograph.body.BasePosture;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The named view that shows most of a movement: parts that are not hidden, ways and angles that lie
 * in the plane of the paper, and the near face of what is touched. A pose in which nothing moves
 * keeps the view of its base posture.
 */
public final class BestView {
  private static final double WAYS = 1.2;
  private static final double ANGLES = 1.5;

  /** What a wall or a board costs that is seen from behind. */
  private static final double FACE_AWAY = .8;

  /** A front view needs a reason, and a slanting one too: it shows no angle truly. */
  private static final double UNUSUAL = .1;

  /** A joint that goes less far than this, in body heights, stands still. */
  private static final double STILL = .02;

  private final PoseFile pose;
  private final Side near;
  private final boolean wallAhead;
  private final List<Box> boxes;

  /**
   * @param near the side that is seen in a view from a side
   * @param wallAhead true where a wall or door stands ahead
   */
  BestView(PoseFile pose, Side near, boolean wallAhead, List<Support> supports) {
    this.pose = pose;
    this.near = near;
    this.wallAhead = wallAhead;
    this.boxes = supports.stream().flatMap(support -> support.boxes().stream()).toList();
  }

  /** The best view of these key frames. */
  View of(List<Moment> keys) {
    List<Goniometer> angles = keys.stream().flatMap(key -> angles(key).stream()).toList();
    List<Vec> ways = ways(keys);
    if (ways.isEmpty() && angles.isEmpty()) {
      return View.usual(pose.base());
    }
    return candidates().stream()
        .max(Comparator.comparingDouble(view -> score(view, keys, ways, angles)))
        .orElseThrow();
  }

  /**
   * The named view in which something is seen best.
   *
   * @param seen how well it is seen, by the direction towards the viewer
   * @param near the side that is seen in a view from a side
   */
  public static View of(ToDoubleFunction<Vec> seen, BasePosture base, Side near) {
    return candidates(base).stream()
        .max(
            Comparator.comparingDouble(
                view -> seen.applyAsDouble(view.camera(near, base, false).toViewer())))
        .orElseThrow();
  }

  private List<View> candidates() {
    return candidates(pose.base());
  }

  private static List<View> candidates(BasePosture base) {
    return View.usual(base) == View.SIDE_LYING
        ? List.of(View.SIDE_LYING, View.FRONT, View.BACK, View.OBLIQUE_TOP)
        : List.of(View.SIDE, View.BACK, View.FRONT, View.THREE_QUARTER, View.OBLIQUE_TOP);
  }

  private double score(View view, List<Moment> keys, List<Vec> ways, List<Goniometer> angles) {
    Camera camera = view.camera(near, pose.base(), wallAhead);
    Vec toViewer = camera.toViewer();
    double score = 0;
    for (Moment key : keys) {
      Sight sight = new Sight(Capsule.of(key.skeleton()), boxes, toViewer);
      score += (sight.seen(capsule -> true) + sight.seen(this::moves)) / keys.size();
    }
    double length = ways.stream().mapToDouble(Vec::length).sum();
    score += WAYS * ways.stream().mapToDouble(way -> inPlane(way, toViewer)).sum() / length(length);
    score +=
        ANGLES * angles.stream().mapToDouble(angle -> angle.seen(toViewer)).average().orElse(0);
    score -= FACE_AWAY * boxes.stream().filter(box -> facesAway(box, keys, toViewer)).count();
    return view == View.usual(pose.base()) || view == View.BACK ? score : score - UNUSUAL;
  }

  private static double length(double sum) {
    return sum == 0 ? 1 : sum;
  }

  private boolean moves(Capsule capsule) {
    Set<Limb> limbs =
        capsule
            .side()
            .map(side -> pose.moving().limbs().getOrDefault(side, Set.of()))
            .orElse(Set.of());
    return capsule.limb().map(limbs::contains).orElse(pose.moving().trunk());
  }

  /** How much of a way lies in the plane of the paper. */
  private static double inPlane(Vec way, Vec toViewer) {
    return way.minus(toViewer.times(toViewer.dot(way))).length();
  }

  /** True for an upright board whose side towards the body is not seen. */
  private static boolean facesAway(Box box, List<Moment> keys, Vec toViewer) {
    Vec half = box.half();
    boolean alongX = half.x() < half.z();
    boolean board = half.y() > .3 && Math.min(half.x(), half.z()) < .05;
    Vec normal = alongX ? box.axes().x() : box.axes().z();
    Vec toBody = keys.get(0).skeleton().pelvis().origin().minus(box.centre());
    return board && Math.signum(normal.dot(toBody)) * normal.dot(toViewer) < 0;
  }

  private List<Goniometer> angles(Moment key) {
    List<Goniometer> all = new ArrayList<>();
    for (Mark mark : pose.marks()) {
      if (mark instanceof Mark.Angle angle) {
        Goniometer.at(key.skeleton(), angle.joint(), angle.side().orElse(near))
            .filter(goniometer -> Math.abs(goniometer.degrees()) > 5)
            .ifPresent(all::add);
      }
    }
    return all;
  }

  /** How the joints go from one key frame to the next. */
  private static List<Vec> ways(List<Moment> keys) {
    return IntStream.range(1, keys.size())
        .boxed()
        .flatMap(i -> ways(keys.get(i - 1), keys.get(i)).stream())
        .filter(way -> way.length() > STILL)
        .toList();
  }

  private static List<Vec> ways(Moment from, Moment to) {
    List<Vec> before = Capsule.of(from.skeleton()).stream().map(Capsule::to).toList();
    List<Vec> after = Capsule.of(to.skeleton()).stream().map(Capsule::to).toList();
    return IntStream.range(0, before.size())
        .mapToObj(i -> after.get(i).minus(before.get(i)))
        .toList();
  }
}
