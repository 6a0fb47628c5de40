package goniograph.body;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Static moments at the joints that a free part of the body hangs on. Valid only where that part
 * carries no contact; the caller knows the contacts.
 */
public final class JointLoad {
  /**
   * Lever arm of the neck extensors about C7, in metres: stated, not measured; it lies among the
   * arms of the open neck model of Mortensen, Vasavada and Merryweather 2018.
   */
  public static final double NECK_LEVER_ARM = .038;

  private JointLoad() {}

  /** Head and neck about C7, in Nm; flexing positive (the extensors must hold it). */
  public static double neck(Skeleton s) {
    return flexing(s, s.spine(SpineJoint.C7), of(s, SegmentMass.HEAD_AND_NECK));
  }

  /**
   * Everything above the pelvis about L5-S1, in Nm; flexing positive.
   *
   * @param heldKg mass held in each hand
   */
  public static double lowBack(Skeleton s, double heldKg) {
    List<MassPoint> above =
        MassPoint.of(s).stream()
            .filter(point -> !LEGS_AND_PELVIS.contains(point.segment()))
            .toList();
    List<Statics.Force> forces = new ArrayList<>(weights(s, above));
    Arrays.stream(Side.values()).forEach(side -> forces.add(held(s, side, heldKg)));
    return flexing(s, s.spine(SpineJoint.L5S1), forces);
  }

  /** The arm about the shoulder, in Nm, whatever its direction. */
  public static double shoulder(Skeleton s, Side side, double heldKg) {
    List<Statics.Force> forces = new ArrayList<>(weights(s, of(s, side, ARM)));
    forces.add(held(s, side, heldKg));
    return about(s, Landmarks.shoulder(s, side), forces).length();
  }

  /** The leg about the hip, in Nm, whatever its direction. */
  public static double hip(Skeleton s, Side side) {
    return about(s, Landmarks.hip(s, side), weights(s, of(s, side, LEG))).length();
  }

  /** Shank and foot about the knee, in Nm, whatever its direction. */
  public static double knee(Skeleton s, Side side) {
    return about(s, Landmarks.knee(s, side), weights(s, of(s, side, BELOW_KNEE))).length();
  }

  private static final Set<SegmentMass> ARM =
      Set.of(SegmentMass.UPPER_ARM, SegmentMass.FOREARM, SegmentMass.HAND);
  private static final Set<SegmentMass> BELOW_KNEE = Set.of(SegmentMass.SHANK, SegmentMass.FOOT);
  private static final Set<SegmentMass> LEG =
      Set.of(SegmentMass.THIGH, SegmentMass.SHANK, SegmentMass.FOOT);
  private static final Set<SegmentMass> LEGS_AND_PELVIS =
      Set.of(SegmentMass.PELVIS, SegmentMass.THIGH, SegmentMass.SHANK, SegmentMass.FOOT);

  private static List<MassPoint> of(Skeleton s, Side side, Set<SegmentMass> segments) {
    return MassPoint.of(s).stream()
        .filter(p -> p.side().equals(Optional.of(side)) && segments.contains(p.segment()))
        .toList();
  }

  private static List<Statics.Force> of(Skeleton s, SegmentMass segment) {
    return weights(s, MassPoint.of(s).stream().filter(p -> p.segment() == segment).toList());
  }

  private static List<Statics.Force> weights(Skeleton s, List<MassPoint> points) {
    return points.stream()
        .map(point -> Statics.Force.weight(metres(s, point.centre()), point.kg(s.body())))
        .toList();
  }

  private static Statics.Force held(Skeleton s, Side side, double kg) {
    return Statics.Force.weight(metres(s, Landmarks.palm(s, side)), kg);
  }

  private static double flexing(Skeleton s, Frame joint, List<Statics.Force> forces) {
    return -about(s, joint.origin(), forces).dot(joint.axes().z());
  }

  private static Vec about(Skeleton s, Vec joint, List<Statics.Force> forces) {
    return Statics.moment(metres(s, joint), forces);
  }

  private static Vec metres(Skeleton s, Vec point) {
    return point.times(s.body().heightCm() / 100);
  }
}
