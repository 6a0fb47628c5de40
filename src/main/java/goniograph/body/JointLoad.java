package goniograph.body;

import java.util.Arrays;
import java.util.List;

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
    return nm(s, Chain.NECK, Side.RIGHT, List.of());
  }

  /**
   * Everything above the pelvis about L5-S1, in Nm; flexing positive.
   *
   * @param heldKg mass held in each hand
   */
  public static double lowBack(Skeleton s, double heldKg) {
    return nm(
        s,
        Chain.LOW_BACK,
        Side.RIGHT,
        Arrays.stream(Side.values()).map(side -> held(s, side, heldKg)).toList());
  }

  /** The arm about the shoulder, in Nm, whatever its direction. */
  public static double shoulder(Skeleton s, Side side, double heldKg) {
    return nm(s, Chain.SHOULDER, side, List.of(held(s, side, heldKg)));
  }

  /** The leg about the hip, in Nm, whatever its direction. */
  public static double hip(Skeleton s, Side side) {
    return nm(s, Chain.HIP, side, List.of());
  }

  /** Shank and foot about the knee, in Nm, whatever its direction. */
  public static double knee(Skeleton s, Side side) {
    return nm(s, Chain.KNEE, side, List.of());
  }

  private static double nm(Skeleton s, Chain chain, Side side, List<Statics.Force> forces) {
    Vec moment = chain.ownMoment(s, side).plus(chain.moment(s, side, forces));
    return chain.flexing(s, side).map(moment::dot).orElseGet(moment::length);
  }

  private static Statics.Force held(Skeleton s, Side side, double kg) {
    return Statics.Force.weight(Chain.metres(s, Landmarks.palm(s, side)), kg);
  }
}
