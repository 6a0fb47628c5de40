package goniograph.body;

import java.util.Map;

/**
 * A body in one pose: the frame of every segment in the world.
 *
 * @param body the lengths and build
 * @param pelvis origin in the middle between the hip centres
 * @param spine each joint's frame, origin at the joint
 * @param left the left limbs' frames, origin at the proximal joint centre
 * @param right the right limbs' frames
 * @param curl each hand's finger bend in degrees a finger joint: 0 flat, 12 rest, 70 fist
 */
public record Skeleton(
    Body body,
    Frame pelvis,
    Map<SpineJoint, Frame> spine,
    Map<Limb, Frame> left,
    Map<Limb, Frame> right,
    Map<Side, Double> curl) {
  public Skeleton {
    spine = Map.copyOf(spine);
    left = Map.copyOf(left);
    right = Map.copyOf(right);
    curl = Map.copyOf(curl);
  }

  /** The frame of a limb segment. */
  public Frame limb(Limb limb, Side side) {
    Frame frame = (side == Side.LEFT ? left : right).get(limb);
    if (frame == null) {
      throw new IllegalArgumentException(side + " " + limb);
    }
    return frame;
  }

  /** The frame above a spine joint; that of C0 carries the head. */
  public Frame spine(SpineJoint joint) {
    Frame frame = spine.get(joint);
    if (frame == null) {
      throw new IllegalArgumentException(joint.toString());
    }
    return frame;
  }
}
