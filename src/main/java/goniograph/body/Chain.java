package goniograph.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A part of the body that hangs freely on one joint, and what it asks of that joint. Valid only
 * where the part carries no contact; the caller knows the contacts.
 */
public enum Chain {
  /** Head and neck on C7. */
  NECK(Set.of(SegmentMass.HEAD_AND_NECK)),
  /** Everything above the pelvis on L5-S1. */
  LOW_BACK(
      Set.of(
          SegmentMass.HEAD_AND_NECK,
          SegmentMass.THORAX,
          SegmentMass.ABDOMEN,
          SegmentMass.UPPER_ARM,
          SegmentMass.FOREARM,
          SegmentMass.HAND)),
  /** An arm on its shoulder. */
  SHOULDER(Set.of(SegmentMass.UPPER_ARM, SegmentMass.FOREARM, SegmentMass.HAND)),
  /** A leg on its hip. */
  HIP(Set.of(SegmentMass.THIGH, SegmentMass.SHANK, SegmentMass.FOOT)),
  /** Shank and foot on their knee. */
  KNEE(Set.of(SegmentMass.SHANK, SegmentMass.FOOT));

  private final Set<SegmentMass> segments;

  Chain(Set<SegmentMass> segments) {
    this.segments = segments;
  }

  /** True for chains of a limb, which has two sides; for the others the side does not matter. */
  public boolean paired() {
    return this == SHOULDER || this == HIP || this == KNEE;
  }

  /** True where a limb segment is part of this chain on {@code side}. */
  public boolean holds(Limb limb, Side of, Side side) {
    return segments.contains(SegmentMass.of(limb)) && (!paired() || of == side);
  }

  /** The moment of forces about the joint, in Nm, right-handed; the forces lie in metres. */
  public Vec moment(Skeleton s, Side side, List<Statics.Force> forces) {
    return Statics.moment(metres(s, joint(s, side).origin()), forces);
  }

  /** The moment of the chain's own weight about the joint, in Nm. */
  public Vec ownMoment(Skeleton s, Side side) {
    List<Statics.Force> weights = new ArrayList<>();
    for (MassPoint point : MassPoint.of(s)) {
      if (holds(point, side)) {
        weights.add(Statics.Force.weight(metres(s, point.centre()), point.kg(s.body())));
      }
    }
    return moment(s, side, weights);
  }

  private boolean holds(MassPoint point, Side side) {
    return segments.contains(point.segment())
        && (!paired() || point.side().equals(Optional.of(side)));
  }

  /**
   * The axis about which a moment is told with its sign, flexing positive; empty where only its
   * size is told.
   */
  public Optional<Vec> flexing(Skeleton s, Side side) {
    return paired() ? Optional.empty() : Optional.of(joint(s, side).axes().z().times(-1));
  }

  /** A point of the scene in metres. */
  public static Vec metres(Skeleton s, Vec point) {
    return point.times(s.body().heightCm() / 100);
  }

  private Frame joint(Skeleton s, Side side) {
    return switch (this) {
      case NECK -> s.spine(SpineJoint.C7);
      case LOW_BACK -> s.spine(SpineJoint.L5S1);
      case SHOULDER -> s.limb(Limb.UPPER_ARM, side);
      case HIP -> s.limb(Limb.THIGH, side);
      case KNEE -> s.limb(Limb.SHANK, side);
    };
  }
}
