package goniograph.figure;

import goniograph.body.FingerShape;
import goniograph.body.Fingers;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A hand in one of the named shapes.
 *
 * @param sides the side, or both where they are alike
 */
public record ShapedHand(PoseTelling.Sides sides, FingerShape shape) {
  /** Fingers bent alike to within this are alike, degrees. */
  private static final double ALIKE = 2;

  static Optional<ShapedHand> of(Skeleton s, Side side) {
    Fingers fingers = fingers(s, side);
    return Arrays.stream(FingerShape.values())
        .filter(shape -> alike(shape.fingers(), fingers))
        .map(shape -> new ShapedHand(PoseTelling.Sides.of(side), shape))
        .findFirst();
  }

  static boolean same(Skeleton a, Skeleton b, Side side) {
    return alike(fingers(a, side), fingers(b, side));
  }

  private static Fingers fingers(Skeleton s, Side side) {
    return s.fingers().getOrDefault(side, Fingers.REST);
  }

  private static boolean alike(Fingers a, Fingers b) {
    return Math.abs(a.knuckles() - b.knuckles()) < ALIKE
        && Math.abs(a.middle() - b.middle()) < ALIKE
        && Math.abs(a.ends() - b.ends()) < ALIKE
        && Math.abs(a.thumb() - b.thumb()) < ALIKE;
  }

  /** Both hands in one where they are alike. */
  static List<ShapedHand> both(List<ShapedHand> hands) {
    return hands.size() == 2 && hands.get(0).shape == hands.get(1).shape
        ? List.of(new ShapedHand(PoseTelling.Sides.BOTH, hands.get(0).shape))
        : hands;
  }
}
