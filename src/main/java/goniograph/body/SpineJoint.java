package goniograph.body;

import java.util.Arrays;

/**
 * The eleven joints of the spine, from below; the frame of a joint is that of the part above it.
 */
public enum SpineJoint {
  L5S1(Joint.LUMBAR),
  L3(Joint.LUMBAR),
  L1(Joint.LUMBAR),
  T11(Joint.THORACIC),
  T8(Joint.THORACIC),
  T5(Joint.THORACIC),
  T2(Joint.THORACIC),
  C7(Joint.NECK),
  C5(Joint.NECK),
  C3(Joint.NECK),
  C0(Joint.HEAD);

  private final Joint region;

  SpineJoint(Joint region) {
    this.region = region;
  }

  /** The region whose angle this joint shares equally with its neighbours. */
  public Joint region() {
    return region;
  }

  /** How many joints share a region's angle. */
  static int count(Joint region) {
    return (int) Arrays.stream(values()).filter(joint -> joint.region == region).count();
  }
}
