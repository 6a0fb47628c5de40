package goniograph.body;

/** A limb segment; each stands on both sides. Its frame's origin is its proximal joint centre. */
public enum Limb {
  UPPER_ARM,
  FOREARM,
  HAND,
  THIGH,
  SHANK,
  FOOT
}
