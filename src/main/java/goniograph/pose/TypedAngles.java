package goniograph.pose;

import java.util.List;

/**
 * What a map of angles says.
 *
 * @param angles angles of joints
 * @param wishes how segments shall lie in the world
 */
record TypedAngles(List<TypedAngle> angles, List<SegmentWish> wishes) {
  /** Nothing. */
  static final TypedAngles NONE = new TypedAngles(List.of(), List.of());

  TypedAngles {
    angles = List.copyOf(angles);
    wishes = List.copyOf(wishes);
  }
}
