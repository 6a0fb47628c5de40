package goniograph.pose;

import goniograph.body.BasePosture;
import goniograph.body.Body;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Where one support of a pose shall stand: asks the body in the first key frame. */
record Site(PoseFile pose, Skeleton start, SupportWish wish) {
  private static final double USUAL_GAP_CM = 15;
  private static final double LAP_GAP_CM = 6;

  /** How far a table reaches back under the wrists and elbows that lean on it. */
  private static final double UNDER_ARMS_CM = 10;

  private static final double WRIST_TO_WALL = .006;

  Body body() {
    return pose.body();
  }

  /** A length in cm in the scene's measure. */
  double f(double cm) {
    return body().fraction(cm);
  }

  /** The contacts of the pose, over all key frames, that touch the support or a place of it. */
  private Stream<Contact> touching() {
    return pose.frames().stream()
        .flatMap(frame -> pose.contacts(frame).stream())
        .filter(contact -> wish.targets().contains(contact.target()));
  }

  boolean touched(Predicate<Part> part) {
    return touching().map(Contact::part).anyMatch(part);
  }

  /** True where a place of the support, for instance its back, is touched. */
  boolean touchedAt(String place) {
    return touching().anyMatch(contact -> contact.target().equals(wish.name() + " " + place));
  }

  /** The sides on which a kind of part touches the support. */
  List<Side> touchingSides(Predicate<Part> part) {
    return Arrays.stream(Side.values())
        .filter(
            side ->
                touching()
                    .filter(contact -> part.test(contact.part()))
                    .anyMatch(contact -> contact.side().filter(side::equals).isPresent()))
        .toList();
  }

  /** The middle of the parts that touch it in the first key frame's body. */
  Optional<Vec> touchingPoint() {
    List<Vec> points = touching().map(contact -> touchingPoint(start, contact)).distinct().toList();
    return points.stream().reduce(Vec::plus).map(sum -> sum.times(1.0 / points.size()));
  }

  private static Vec touchingPoint(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    return switch (contact.part()) {
      case KNEE -> Landmarks.knee(s, side);
      case FOOT, HEEL, TOES -> Landmarks.ankle(s, side);
      case HAND, FINGERTIPS -> Landmarks.palm(s, side);
      case HIPS -> s.pelvis().origin();
      case HEAD -> Landmarks.head(s);
      case FOREARM, ELBOW -> Landmarks.elbow(s, side);
      default -> s.spine(SpineJoint.T5).origin();
    };
  }

  /** Where it stands; what is sat on, and what the back leans on, stands behind. */
  Where where() {
    boolean back = touched(part -> part == Part.BACK || part == Part.UPPER_BACK);
    return wish.where()
        .orElse(wish.kind().seat() || back && !wish.kind().under() ? Where.BEHIND : Where.AHEAD);
  }

  /** How far the trunk reaches to the back. */
  double backwards() {
    Vec back = Where.BEHIND.away();
    return Math.max(Outline.hips(start, back), Outline.trunk(start, back, TrunkSection.ALL));
  }

  /** From the middle of the near edge away from the person, at the wished or usual distance. */
  Stand beside() {
    double gap = f(wish.distanceCm().orElse(USUAL_GAP_CM));
    return at(Outline.trunkAndLegs(start, where().away()) + gap);
  }

  /**
   * As {@link #beside} for what is upright: without a wished distance its face is at the hands or
   * behind the back that touches it.
   */
  Stand upright() {
    if (wish.distanceCm().isPresent()) {
      return beside();
    }
    if (where() == Where.BEHIND) {
      return at(backwards());
    }
    OptionalDouble touching =
        Stream.of(wrists(), elbows(), soles()).flatMapToDouble(Function.identity()).max();
    return touching.isPresent() ? at(touching.getAsDouble()) : beside();
  }

  private DoubleStream soles() {
    return touchingSides(part -> part == Part.FOOT).stream()
        .mapToDouble(side -> Landmarks.ankle(start, side).dot(where().away()) + Lengths.ANKLE);
  }

  private DoubleStream wrists() {
    return touchingSides(Part::ofHand).stream()
        .mapToDouble(side -> Landmarks.wrist(start, side).dot(where().away()) + WRIST_TO_WALL);
  }

  private DoubleStream elbows() {
    return touchingSides(Part::ofForearm).stream()
        .mapToDouble(side -> Landmarks.elbow(start, side).dot(where().away()) + Touch.ELBOW);
  }

  /** The same with the near edge's middle level with the hands that touch it, unless typed. */
  Stand atHands(Stand stand) {
    List<Side> hands = touchingSides(Part::ofHand);
    if (wish.side().isEmpty() || wish.alongCm().isPresent() || hands.isEmpty()) {
      return stand;
    }
    double x = hands.stream().mapToDouble(s -> Landmarks.wrist(start, s).x()).average().orElse(0);
    Vec origin = new Vec(x, 0, stand.origin().z());
    return new Stand(body(), origin, stand.ahead());
  }

  /** The support, built. */
  Placed placed(List<Box> boxes, List<Surface> faces, Vec near) {
    return placed(boxes, faces, Map.of(), near);
  }

  /** The support, built, with faces that have names of their own. */
  Placed placed(List<Box> boxes, List<Surface> faces, Map<String, List<Surface>> places, Vec near) {
    return new Placed(wish, where(), boxes, faces, places, near);
  }

  /** Under the foot that is on it, its edge 3 cm before the heel; else as {@link #beside}. */
  Stand underFoot() {
    List<Side> feet = touchingSides(Part::ofFoot);
    Stand usual = beside();
    if (feet.isEmpty() || where() != Where.AHEAD || wish.distanceCm().isPresent()) {
      return usual;
    }
    double heel = feet.stream().mapToDouble(s -> Landmarks.heel(start, s).x()).min().orElse(0);
    return new Stand(body(), new Vec(heel - f(3), 0, usual.origin().z()), usual.ahead());
  }

  /**
   * Before the trunk, over the thighs of who sits; under the arms of who leans on it; else as
   * {@link #beside}.
   */
  Stand overLap() {
    OptionalDouble arms = Stream.of(wrists(), elbows()).flatMapToDouble(Function.identity()).min();
    boolean leans = pose.base() == BasePosture.LEANING && arms.isPresent();
    if (leans && wish.distanceCm().isEmpty()) {
      return at(arms.getAsDouble() - f(UNDER_ARMS_CM));
    }
    boolean lap = pose.base() == BasePosture.SITTING && where() == Where.AHEAD;
    return lap && wish.distanceCm().isEmpty()
        ? at(Outline.trunk(start, where().away(), TrunkSection.ALL) + f(LAP_GAP_CM))
        : beside();
  }

  /** A point of the floor so far out in the support's direction, level with the hips. */
  private Stand at(double out) {
    Vec away = where().away();
    Vec hips = start.pelvis().origin();
    double along = f(wish.alongCm().orElse(0.0));
    Vec origin =
        wish.side().isPresent()
            ? new Vec(hips.x() + along, 0, out * away.z())
            : new Vec(out * away.x(), 0, hips.z() + along);
    return new Stand(body(), origin, away);
  }
}
