package goniograph.body;

/**
 * Masses of body segments as fractions of body mass, and where their centres lie as a fraction of
 * the segment's length from its proximal end: Dempster 1955, as adapted by Winter, Biomechanics and
 * Motor Control of Human Movement, 4th ed. 2009, table 4.1.
 */
public enum SegmentMass {
  /** From C7-T1 to the ear canal, where its centre lies. */
  HEAD_AND_NECK(.081, 1.000),
  /** From C7-T1 to T12-L1. */
  THORAX(.216, .82),
  /** From T12-L1 to L4-L5. */
  ABDOMEN(.139, .44),
  /** From L4-L5 to the hip centre. */
  PELVIS(.142, .105),
  UPPER_ARM(.028, .436),
  FOREARM(.016, .430),
  /** From the wrist to the second knuckle of the middle finger. */
  HAND(.006, .506),
  THIGH(.100, .433),
  SHANK(.0465, .433),
  /** From the outer ankle to the ball of the foot. */
  FOOT(.0145, .50);

  private final double mass;
  private final double centre;

  SegmentMass(double mass, double centre) {
    this.mass = mass;
    this.centre = centre;
  }

  /** Fraction of body mass; of one side for limbs. */
  public double mass() {
    return mass;
  }

  /** Centre of mass from the proximal end, as a fraction of the segment's length. */
  public double centre() {
    return centre;
  }

  /** The row for a limb segment. */
  public static SegmentMass of(Limb limb) {
    return switch (limb) {
      case UPPER_ARM -> UPPER_ARM;
      case FOREARM -> FOREARM;
      case HAND -> HAND;
      case THIGH -> THIGH;
      case SHANK -> SHANK;
      case FOOT -> FOOT;
    };
  }
}
