package goniograph.pose;

import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.JointLoad;
import goniograph.body.Kinematics;
import goniograph.body.Movement;
import goniograph.body.Posture;
import goniograph.body.Reading;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Statics;
import goniograph.body.Vec;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;

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
    Measuring.Depth deepest = measuring.deepest(s);
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
        loads(s, contacts),
        moment.props().stream().flatMap(p -> p.length().stream()).map(pose.body()::cm).findFirst());
  }

  private Map<Side, FootState> feet(Skeleton s, List<Contact> contacts) {
    Map<Side, FootState> feet = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      feet.put(side, measuring.foot(s, side, contacts));
    }
    return feet;
  }

  private static Loads loads(Skeleton s, List<Contact> contacts) {
    boolean trunkFree =
        contacts.stream()
            .noneMatch(
                c ->
                    switch (c.part()) {
                      case BACK, UPPER_BACK, FRONT, SIDE -> true;
                      default -> false;
                    });
    boolean handsFree = contacts.stream().noneMatch(c -> c.part().ofArm());
    boolean headFree = contacts.stream().noneMatch(c -> c.part() == Part.HEAD);
    Optional<Double> neck = when(trunkFree && headFree, () -> JointLoad.neck(s));
    return new Loads(
        neck,
        neck.map(nm -> Statics.muscleForce(nm, JointLoad.NECK_LEVER_ARM)),
        when(trunkFree && handsFree, () -> JointLoad.lowBack(s, 0)),
        free(contacts, side -> JointLoad.shoulder(s, side, 0), Part.HAND, Part.FINGERTIPS, Part.FOREARM, Part.ELBOW),
        free(contacts, side -> JointLoad.hip(s, side), Part.FOOT, Part.HEEL, Part.TOES, Part.KNEE),
        free(contacts, side -> JointLoad.knee(s, side), Part.FOOT, Part.HEEL, Part.TOES));
  }

  private static Optional<Double> when(boolean valid, DoubleSupplier moment) {
    return valid ? Optional.of(moment.getAsDouble()) : Optional.empty();
  }

  private static Map<Side, Double> free(
      List<Contact> contacts, ToDoubleFunction<Side> moment, Part... parts) {
    Map<Side, Double> moments = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      boolean touches =
          contacts.stream()
              .anyMatch(
                  c -> List.of(parts).contains(c.part()) && c.side().equals(Optional.of(side)));
      if (!touches) {
        moments.put(side, moment.applyAsDouble(side));
      }
    }
    return moments;
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
        .filter(c -> c.side().isPresent() && c.side().equals(freedom.side()))
        .filter(c -> c.manner() != Contact.Manner.HOLDING)
        .anyMatch(
            c ->
                switch (freedom.joint()) {
                  case HIP, KNEE, ANKLE -> c.part().ofFoot() || c.part() == Part.KNEE;
                  case SHOULDER, ELBOW, FOREARM, WRIST -> c.part().ofArm();
                  default -> false;
                });
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
}
