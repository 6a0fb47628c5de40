package goniograph.figure;

import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import goniograph.pose.Focus;
import goniograph.pose.Scene;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;

/** The one limb that works; there is none where both sides do. */
record WorkingLimb(Side side, LimbWords.Group group) {

  static Optional<WorkingLimb> of(Scene scene) {
    Set<Limb> left = scene.movingLimbs().getOrDefault(Side.LEFT, Set.of());
    Set<Limb> right = scene.movingLimbs().getOrDefault(Side.RIGHT, Set.of());
    if (left.isEmpty() == right.isEmpty()) {
      return Optional.empty();
    }
    Set<Limb> limbs = left.isEmpty() ? right : left;
    boolean leg = limbs.stream().anyMatch(limb -> limb.compareTo(Limb.THIGH) >= 0);
    return Optional.of(
        new WorkingLimb(
            left.isEmpty() ? Side.RIGHT : Side.LEFT,
            leg ? LimbWords.Group.LEG : LimbWords.Group.ARM));
  }

  /**
   * Where the word wants to stand, on paper: at the middle of the forearm or the shank, at the hand
   * or the foot where it alone is shown.
   */
  Coordinate at(Skeleton skeleton, Projection paper, Optional<Focus> focus) {
    boolean end =
        focus
            .map(Focus::region)
            .filter(region -> region == Focus.Region.HAND || region == Focus.Region.FOOT)
            .isPresent();
    return paper.at(end ? end(skeleton) : middle(skeleton));
  }

  private Vec end(Skeleton skeleton) {
    return group == LimbWords.Group.ARM
        ? Landmarks.palm(skeleton, side)
        : Landmarks.ankle(skeleton, side);
  }

  private Vec middle(Skeleton skeleton) {
    return group == LimbWords.Group.ARM
        ? Landmarks.elbow(skeleton, side).towards(Landmarks.wrist(skeleton, side), .5)
        : Landmarks.knee(skeleton, side).towards(Landmarks.ankle(skeleton, side), .4);
  }
}
