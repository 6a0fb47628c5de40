package goniograph.body;

import static goniograph.body.SpineJoint.C0;
import static goniograph.body.SpineJoint.C3;
import static goniograph.body.SpineJoint.C5;
import static goniograph.body.SpineJoint.C7;
import static goniograph.body.SpineJoint.L1;
import static goniograph.body.SpineJoint.L3;
import static goniograph.body.SpineJoint.L5S1;
import static goniograph.body.SpineJoint.T11;
import static goniograph.body.SpineJoint.T2;
import static goniograph.body.SpineJoint.T5;
import static goniograph.body.SpineJoint.T8;

import java.util.EnumMap;
import java.util.Map;

/**
 * Lengths of the body as fractions of standing height. Limbs: Drillis and Contini 1966, as
 * tabulated in Winter, Biomechanics and Motor Control of Human Movement, 4th ed. 2009, figure 4.1.
 * Spine, shoulder offset and foot points are the house's own placement, tuned to a standing height
 * of 1.00, a centre of mass at .570 and a craniovertebral angle of 52.8 degrees.
 */
public final class Lengths {
  public static final double UPPER_ARM = .186;
  public static final double FOREARM = .146;
  public static final double HAND = .108;
  public static final double THIGH = .245;
  public static final double SHANK = .246;

  /** Ankle centre above the sole. */
  public static final double ANKLE = .039;

  public static final double FOOT = .152;

  /** Hip centre above the sole, upright. */
  public static final double HIP = .530;

  /** From the middle to each hip centre; the house's own. */
  public static final double HALF_HIP = .050;

  /** Half the distance between the shoulder tips (biacromial .259). */
  public static final double HALF_BIACROMIAL = .1295;

  /** From the ankle centre back to the heel, in the foot's frame; the house's own. */
  public static final double HEEL = .042;

  /** From the ankle centre ahead to the ball of the foot. */
  public static final double BALL = .070;

  /** From the ankle centre ahead to the toe tip. */
  public static final double TOE = FOOT - HEEL;

  /** From the wrist to the middle of the palm. */
  public static final double PALM = .045;

  /** Knee centre above the ground when kneeling. */
  public static final double KNEELING_KNEE = .035;

  /** Shoulder centre in the frame above T2, on the right; left is its mirror. */
  public static final Vec SHOULDER = new Vec(.030, -.036, .108);

  /** Middle of the head in the frame above C0. */
  public static final Vec HEAD = new Vec(.016, .023, 0);

  /** Half axes of the skull: length, height, breadth; 6 % enlarged for legibility. */
  public static final Vec SKULL = new Vec(.058 * 1.06, .065 * 1.06, .046 * 1.06);

  /** The right tragus (ear canal) from the middle of the head. */
  public static final Vec TRAGUS = new Vec(-.006, -.004, .046 * 1.06);

  /** The skin over the spinous process of C7, in the frame above C7. */
  public static final Vec C7_SKIN = new Vec(-.024, 0, 0);

  private static final Map<SpineJoint, Vec> SPINE = spineTable();

  private Lengths() {}

  /** Where a joint of the spine lies in upright standing, from the middle between the hips. */
  public static Vec spine(SpineJoint joint) {
    Vec place = SPINE.get(joint);
    if (place == null) {
      throw new IllegalArgumentException(joint.toString());
    }
    return place;
  }

  /** From the joint's parent to the joint, in the parent's frame. */
  static Vec spineStep(SpineJoint joint) {
    return joint == L5S1
        ? spine(L5S1)
        : spine(joint).minus(spine(SpineJoint.values()[joint.ordinal() - 1]));
  }

  /** The length of a limb segment; of a hand to its longest finger, of a foot heel to toe. */
  public static double of(Limb limb) {
    return switch (limb) {
      case UPPER_ARM -> UPPER_ARM;
      case FOREARM -> FOREARM;
      case HAND -> HAND;
      case THIGH -> THIGH;
      case SHANK -> SHANK;
      case FOOT -> FOOT;
    };
  }

  private static Map<SpineJoint, Vec> spineTable() {
    Map<SpineJoint, Vec> table = new EnumMap<>(SpineJoint.class);
    table.put(L5S1, new Vec(-.020, .058, 0));
    table.put(L3, new Vec(-.004, .100, 0));
    table.put(L1, new Vec(-.010, .140, 0));
    table.put(T11, new Vec(-.026, .180, 0));
    table.put(T8, new Vec(-.040, .225, 0));
    table.put(T5, new Vec(-.044, .268, 0));
    table.put(T2, new Vec(-.032, .305, 0));
    table.put(C7, new Vec(-.018, .328, 0));
    table.put(C5, new Vec(-.004, .350, 0));
    table.put(C3, new Vec(.004, .370, 0));
    table.put(C0, new Vec(.008, .388, 0));
    return table;
  }
}
