package goniograph.figure;

import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import java.util.Locale;

/**
 * Where a free hand is, by landmarks of an upright body.
 *
 * @param sides the side, or both where they are alike
 */
public record HandPlace(PoseTelling.Sides sides, Height height, Reach reach) {
  /** Farther from the chest than this a hand is in front or behind, body heights. */
  private static final double AHEAD = .09;

  /** Farther out from the shoulder than this a hand is out to the side, body heights. */
  private static final double OUT = .12;

  /** What a hand is as high as. */
  public enum Height {
    ABOVE_HEAD,
    HEAD,
    SHOULDER,
    CHEST,
    WAIST,
    HIP,
    KNEE,
    FLOOR;

    /** Its word in phrase ids. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Where from the body a hand is. */
  public enum Reach {
    FRONT,
    OUT,
    BEHIND,
    CLOSE;

    /** Its word in phrase ids. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  static HandPlace of(Skeleton s, Side side) {
    Vec palm = Landmarks.palm(s, side);
    return new HandPlace(PoseTelling.Sides.of(side), height(s, palm, side), reach(s, palm, side));
  }

  private static Height height(Skeleton s, Vec palm, Side side) {
    double shoulder = Landmarks.shoulder(s, side).y();
    double hip = Landmarks.hip(s, side).y();
    double trunk = shoulder - hip;
    double up = palm.y() - hip;
    if (palm.y() > Landmarks.vertex(s).y()) {
      return Height.ABOVE_HEAD;
    }
    if (up > 1.2 * trunk) {
      return Height.HEAD;
    }
    if (up > .85 * trunk) {
      return Height.SHOULDER;
    }
    if (up > .55 * trunk) {
      return Height.CHEST;
    }
    if (up > .2 * trunk) {
      return Height.WAIST;
    }
    double knee = Landmarks.knee(s, side).y();
    return palm.y() > (hip + knee) / 2 || up > -.35 * trunk
        ? Height.HIP
        : palm.y() > knee / 2 ? Height.KNEE : Height.FLOOR;
  }

  private static Reach reach(Skeleton s, Vec palm, Side side) {
    var chest = s.spine(SpineJoint.T5).axes();
    Vec from = palm.minus(Landmarks.shoulder(s, side));
    double ahead = palm.minus(s.pelvis().origin()).dot(Vec.UP.cross(chest.z()).unit());
    double out = side.sign() * from.dot(chest.z());
    if (out > OUT && out > ahead) {
      return Reach.OUT;
    }
    return ahead > AHEAD ? Reach.FRONT : ahead < -AHEAD ? Reach.BEHIND : Reach.CLOSE;
  }
}
