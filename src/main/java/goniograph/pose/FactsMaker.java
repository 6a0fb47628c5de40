package goniograph.pose;

import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Kinematics;
import goniograph.body.Movement;
import goniograph.body.Posture;
import goniograph.body.Reading;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.DoubleSummaryStatistics;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads the facts off solved bodies. */
final class FactsMaker {
  private final PoseFile pose;
  private final Room room;
  private final Measuring measuring;
  private final Bearing bearing;

  FactsMaker(PoseFile pose, FrameSolver solver) {
    this.pose = pose;
    this.room = solver.room();
    this.measuring = new Measuring(pose, new Touch(room), solver.pins());
    this.bearing = new Bearing(room);
  }

  MomentFacts moment(Moment moment, List<Contact> contacts) {
    Skeleton s = moment.skeleton();
    JointAngles angles = Reading.of(s, pose.base().turn());
    Depths.Depth deepest = new Depths(new Touch(room)).deepest(s, contacts);
    return new MomentFacts(
        moment.name(),
        angles,
        Posture.lean(s),
        angles.get(Joint.LUMBAR, Movement.FLEXION) + angles.get(Joint.THORACIC, Movement.FLEXION),
        Posture.craniovertebral(s),
        measuring.misses(s, contacts),
        measuring.slipCm(s, contacts),
        deepest.cm(),
        deepest.part(),
        bearing.marginCm(s, contacts, contact -> true),
        bearing.marginCm(s, contacts, contact -> !contact.part().ofArm()),
        feet(s, contacts),
        new LoadFinder(pose, moment, contacts).loads(),
        moment.props().stream().flatMap(p -> p.length().stream()).map(pose.body()::cm).findFirst());
  }

  private Map<Side, FootState> feet(Skeleton s, List<Contact> contacts) {
    Map<Side, FootState> feet = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      feet.put(side, measuring.foot(s, side, contacts));
    }
    return feet;
  }

  /** What the contacts made of what was typed. */
  List<TypedDifference> differences(KeyFrame frame, JointAngles solved) {
    Skeleton s = Kinematics.skeleton(pose.body(), pose.base().turn(), pose.angles(frame), Vec.ZERO);
    JointAngles asTyped = Reading.of(s, pose.base().turn());
    List<Contact> contacts = pose.contacts(frame);
    return pose.typed(frame).stream()
        .filter(t -> asTyped.values().containsKey(t.freedom()))
        .filter(t -> t.freedom().joint() != Joint.HAND)
        .map(
            t ->
                new TypedDifference(
                    frame.name(),
                    t.freedom(),
                    asTyped.get(t.freedom()),
                    solved.get(t.freedom()),
                    explained(t.freedom(), contacts),
                    t.at()))
        .filter(difference -> difference.size() > TypedDifference.TOLD)
        .toList();
  }

  private static boolean explained(Freedom freedom, List<Contact> contacts) {
    return contacts.stream()
        .filter(c -> freedom.side().isEmpty() || freedom.side().equals(c.side()))
        .filter(c -> c.manner() != Contact.Manner.HOLDING)
        .anyMatch(c -> solves(c.part(), freedom.joint()));
  }

  /** True where a joint is bent so that a part touches. */
  private static boolean solves(Part part, Joint joint) {
    return switch (joint) {
      case HIP, KNEE, ANKLE -> part.ofFoot() || part == Part.KNEE;
      case SHOULDER, ELBOW, FOREARM, WRIST -> part.ofArm();
      case PELVIS -> part == Part.UPPER_BACK || part == Part.SIDE || part == Part.KNEE;
      case LUMBAR -> part == Part.UPPER_BACK || part.ofForearm();
      case NECK, HEAD -> part == Part.HEAD;
      default -> false;
    };
  }

  /** How far each support that stands beside or ahead is from the body in the first key frame. */
  SortedMap<String, Double> distances(Skeleton start) {
    SortedMap<String, Double> distances = new TreeMap<>();
    for (SupportWish wish : pose.supports()) {
      room.find(wish.name())
          .filter(p -> !p.kind().under() && p.where() != Where.BEHIND)
          .ifPresent(p -> distances.put(wish.name(), distance(start, p)));
    }
    return distances;
  }

  private double distance(Skeleton start, Placed placed) {
    Vec away = placed.where().away();
    return pose.body().cm(placed.near().dot(away) - Outline.trunkAndLegs(start, away));
  }

  /** The height of what is sat on in any key frame. */
  Optional<Double> seatHeightCm() {
    return pose.frames().stream()
        .flatMap(frame -> pose.contacts(frame).stream())
        .filter(c -> c.part() == Part.HIPS)
        .flatMap(c -> pose.support(c.target()).stream())
        .map(SupportWish::heightCm)
        .findFirst();
  }

  /** How far apart in height the feet stand over all key frames. */
  Optional<Double> stepHeightCm() {
    DoubleSummaryStatistics heights =
        pose.frames().stream()
            .flatMap(frame -> pose.contacts(frame).stream())
            .filter(c -> c.part().ofFoot())
            .mapToDouble(c -> pose.support(c.target()).map(SupportWish::heightCm).orElse(0.0))
            .summaryStatistics();
    double step = heights.getMax() - heights.getMin();
    return step > 0 ? Optional.of(step) : Optional.empty();
  }
}
