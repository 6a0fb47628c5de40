package goniograph.pose;

import goniograph.body.Freedom;
import goniograph.body.JointAngles;
import goniograph.body.Kinematics;
import goniograph.body.Reading;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns wishes about segments into joint angles, on the body as it was solved without them: damped
 * least squares over the one or two movements that lay a segment, with a slight pull to where they
 * are, segment after segment from the trunk outwards.
 */
final class Aiming {
  private static final int ROUNDS = 25;
  private static final double STEP = .05;
  private static final double DAMPING = 1e-3;

  /** How much a degree of change counts beside a degree of the segment being off. */
  private static final double STAY = .01;

  private final PoseFile pose;
  private final List<Support> supports;

  private Aiming(PoseFile pose, List<Support> supports) {
    this.pose = pose;
    this.supports = supports;
  }

  /** The pose with the joint angles that its wishes come to. */
  static PoseFile aimed(PoseFile pose, Scene solved) {
    Aiming aiming = new Aiming(pose, solved.supports());
    List<KeyFrame> frames = new ArrayList<>();
    for (int i = 0; i < pose.frames().size(); i++) {
      KeyFrame frame = pose.frames().get(i);
      frames.add(frame.aimed(aiming.angles(frame, solved.keys().get(i).skeleton())));
    }
    return pose.with(frames, aiming.wrong(solved));
  }

  private Optional<KeyFrame> wrong(Scene solved) {
    return pose.wrong()
        .map(
            own ->
                solved.wrong().isEmpty()
                    ? own
                    : own.aimed(
                        angles(pose.wrongWay().orElseThrow(), solved.wrong().get().skeleton())));
  }

  private JointAngles angles(KeyFrame frame, Skeleton solved) {
    JointAngles now = Reading.of(solved, pose.base().turn());
    JointAngles aimed = JointAngles.NONE;
    for (SegmentWish wish : pose.wishes(frame)) {
      List<Freedom> free =
          wish.segment().freedoms(wish.side()).stream()
              .filter(f -> pose.typed(frame).stream().noneMatch(t -> t.freedom().equals(f)))
              .toList();
      now = free.isEmpty() ? now : aimed(wish, now, free);
      for (Freedom freedom : free) {
        aimed = aimed.with(freedom, now.get(freedom));
      }
    }
    return aimed;
  }

  private Skeleton skeleton(JointAngles angles) {
    return Kinematics.skeleton(pose.body(), pose.base().turn(), angles, Vec.ZERO);
  }

  private JointAngles aimed(SegmentWish wish, JointAngles from, List<Freedom> free) {
    Skeleton body = skeleton(from);
    Vec direction = wish.direction(body);
    Vec target = wish.wanted(body, supports, direction);
    JointAngles now = from;
    if (direction.dot(target) < -.95 || (height(wish) && Math.abs(direction.y()) > .95)) {
      now = now.with(free.get(0), now.get(free.get(0)) + 30); // no slope leads out of there
    }
    for (int i = 0; i < ROUNDS; i++) {
      now = step(wish, target, from, now, free);
    }
    return now;
  }

  /** One step of the least squares. Of a level segment only the height of its far end counts. */
  private JointAngles step(
      SegmentWish wish, Vec target, JointAngles from, JointAngles now, List<Freedom> free) {
    Vec off = off(wish, target, now);
    Vec[] slopes = new Vec[free.size()];
    for (int i = 0; i < slopes.length; i++) {
      JointAngles moved = now.with(free.get(i), now.get(free.get(i)) + STEP);
      slopes[i] = off(wish, target, moved).minus(off).times(Math.toDegrees(1) / STEP);
    }
    double[] way = solved(slopes, off, stay(from, now, free));
    JointAngles next = now;
    for (int i = 0; i < way.length; i++) {
      double degrees = Math.max(-20, Math.min(20, Math.toDegrees(way[i])));
      next = next.with(free.get(i), now.get(free.get(i)) + degrees);
    }
    return next;
  }

  private static double[] stay(JointAngles from, JointAngles now, List<Freedom> free) {
    return free.stream().mapToDouble(f -> Math.toRadians(now.get(f) - from.get(f))).toArray();
  }

  private Vec off(SegmentWish wish, Vec target, JointAngles angles) {
    Vec now = wish.direction(skeleton(angles));
    return height(wish) ? new Vec(0, now.y(), 0) : now.minus(target);
  }

  private static boolean height(SegmentWish wish) {
    return wish.aim() instanceof Aim.Level && wish.segment() != Segment.HEAD;
  }

  /** The normal equations of one or two unknowns, by Cramer's rule. */
  private static double[] solved(Vec[] slopes, Vec off, double[] away) {
    double pull = STAY * STAY;
    double a = slopes[0].dot(slopes[0]) + DAMPING + pull;
    double p = -slopes[0].dot(off) - pull * away[0];
    if (slopes.length == 1) {
      return new double[] {p / a};
    }
    double b = slopes[0].dot(slopes[1]);
    double d = slopes[1].dot(slopes[1]) + DAMPING + pull;
    double q = -slopes[1].dot(off) - pull * away[1];
    double determinant = a * d - b * b;
    return new double[] {(d * p - b * q) / determinant, (a * q - b * p) / determinant};
  }
}
