package goniograph.figure;

import java.util.Locale;

/**
 * What moves from one drawing to the next, as a patient would see it.
 *
 * @param what the part and the way it can go
 * @param way which way it goes
 * @param sides the side, or both where they do the same
 * @param size degrees, or four times the centimetres, so that moves can be compared
 */
public record Move(What what, Way way, PoseTelling.Sides sides, double size) {

  /** Parts and the ways they can go, in the order they are told. */
  public enum What {
    BODY_RISE,
    HIPS_RISE,
    TRUNK_LEAN,
    PELVIS_TILT,
    TRUNK_ROUND,
    TRUNK_BEND,
    TRUNK_TURN,
    FEET_APART,
    LEG_BEND,
    LEG_STRAIGHTEN,
    HIP_FLEXION,
    HIP_ABDUCTION,
    HIP_ROTATION,
    KNEE,
    HEEL_RISE,
    ANKLE,
    ARM_REACH,
    ARM_PULL,
    SHOULDER_FLEXION,
    SHOULDER_ABDUCTION,
    SHOULDER_ROTATION,
    SHOULDER_RAISE,
    SHOULDER_PROTRACTION,
    ELBOW,
    FOREARM,
    WRIST_FLEXION,
    WRIST_RADIAL,
    HAND,
    HEAD_NOD,
    HEAD_BEND,
    HEAD_TURN,
    HEAD_TUCK;

    /** Its word in phrase ids, for instance {@code trunk-lean}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Which way something goes. */
  public enum Way {
    /** Away from the middle, the way that the movement's first word names. */
    MORE,
    /** Back towards the middle. */
    BACK,
    /** Away from the middle, the other way. */
    BEYOND;

    /** Its word in phrase ids. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** How a value goes that counts from the middle; within {@code still} it counts as there. */
    static Way of(double from, double to, double still) {
      if (to > from) {
        return to > still ? MORE : BACK;
      }
      return to < -still ? BEYOND : BACK;
    }
  }

  Move on(PoseTelling.Sides others) {
    return new Move(what, way, others, size);
  }

  /** The id of the phrase that tells it. */
  public String phrase() {
    return "figure.move." + what.word() + "." + way.word();
  }
}
