package goniograph.figure;

import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.Optional;

/**
 * How two feet stand, where one is ahead.
 *
 * @param front the side of the foot in front
 * @param line true where both stand on one line, heel to toe
 */
public record Stance(PoseTelling.Sides front, boolean line) {
  /** Ahead by more than this is a step, body heights. */
  private static final double STEP = .10;

  /** Beside each other by less than this is one line, body heights. */
  private static final double LINE = .03;

  static Optional<Stance> of(Skeleton s) {
    Vec way = Landmarks.ankle(s, Side.RIGHT).minus(Landmarks.ankle(s, Side.LEFT));
    Vec right = s.pelvis().axes().z();
    Vec forward = Vec.UP.cross(right).unit();
    double ahead = way.dot(forward);
    if (Math.abs(ahead) < STEP) {
      return Optional.empty();
    }
    PoseTelling.Sides front = ahead > 0 ? PoseTelling.Sides.RIGHT : PoseTelling.Sides.LEFT;
    return Optional.of(new Stance(front, Math.abs(way.dot(right)) < LINE));
  }
}
