package goniograph.body;

import java.util.ArrayList;
import java.util.List;

/**
 * The thumb, between three places that are the house's own: beside the hand, opposite the
 * fingertips, over bent fingers.
 */
public final class Thumb {
  /** From the wrist's end to the tip; z counts towards the palm. */
  private static final List<Vec> BESIDE =
      List.of(
          new Vec(.013, -.014, .003),
          new Vec(.0265, -.031, .006),
          new Vec(.0325, -.048, .007),
          new Vec(.0340, -.062, .006));

  private static final List<Vec> OPPOSITE =
      List.of(
          new Vec(.013, -.014, .006),
          new Vec(.0245, -.026, .020),
          new Vec(.0240, -.038, .033),
          new Vec(.0180, -.049, .040));

  private static final List<Vec> ACROSS =
      List.of(
          new Vec(.013, -.014, .006),
          new Vec(.0270, -.029, .019),
          new Vec(.0200, -.041, .033),
          new Vec(.0050, -.044, .037));

  private static final double MIDWAY = 45;

  private Thumb() {}

  /** The four points of the thumb in the world, from the wrist to the tip. */
  public static List<Vec> joints(Skeleton s, Side side) {
    double across = Math.max(0, Math.min(2 * MIDWAY, s.fingers(side).thumb())) / MIDWAY;
    List<Vec> joints = new ArrayList<>();
    for (int i = 0; i < BESIDE.size(); i++) {
      Vec local =
          across < 1
              ? BESIDE.get(i).towards(OPPOSITE.get(i), across)
              : OPPOSITE.get(i).towards(ACROSS.get(i), across - 1);
      joints.add(s.limb(Limb.HAND, side).point(local.x(), local.y(), -side.sign() * local.z()));
    }
    return joints;
  }
}
