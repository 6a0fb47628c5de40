package goniograph.body;

/**
 * The eleven joints of the spine, from below; the frame of a joint is that of the part above it.
 */
public enum SpineJoint {
  L5S1,
  L3,
  L1,
  T11,
  T8,
  T5,
  T2,
  C7,
  C5,
  C3,
  C0
}
