package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Toes;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the body's outline reaches; the shapes are those the figures are drawn with. */
final class Outline {
  /** How far flesh gives way under the body's weight. */
  static final double COMPRESSION = .008;

  /** The pelvis as an ellipsoid: middle and half axes in its frame. */
  private static final Vec PELVIS = new Vec(-.014, 0, 0);

  private static final Vec PELVIS_HALF = new Vec(.068, .050, .103);

  /** The base of the neck as it is with a straight neck, carried by the chest. */
  private static final TrunkSection NECK_BASE =
      new TrunkSection(Optional.of(SpineJoint.T2), new Vec(.024, .019, 0), .040, .034);

  private Outline() {}

  private record Ball(Vec middle, double radius) {}

  /** How far the hips reach in a direction of length 1, as a height along it. */
  static double hips(Skeleton s, Vec direction) {
    Vec d = s.pelvis().axes().invert(direction);
    Vec stretched =
        new Vec(d.x() * PELVIS_HALF.x(), d.y() * PELVIS_HALF.y(), d.z() * PELVIS_HALF.z());
    return s.pelvis().point(PELVIS).dot(direction) + stretched.length();
  }

  /** How far trunk sections reach in a direction of length 1. */
  static double trunk(Skeleton s, Vec direction, List<TrunkSection> sections) {
    return sections.stream()
        .mapToDouble(section -> section.farthest(s, direction).dot(direction))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** How far trunk and legs reach in a direction of length 1, arms and head left out. */
  static double trunkAndLegs(Skeleton s, Vec direction) {
    double legs =
        legs(s).stream()
            .mapToDouble(ball -> ball.middle.dot(direction) + ball.radius)
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    return Math.max(legs, trunk(s, direction, TrunkSection.ALL));
  }

  /** The sections of the upper back. */
  static List<TrunkSection> upperBack() {
    return List.of(
        TrunkSection.at(SpineJoint.T8),
        TrunkSection.at(SpineJoint.T5),
        TrunkSection.at(SpineJoint.T2),
        NECK_BASE);
  }

  private static List<Ball> legs(Skeleton s) {
    List<Ball> balls = new ArrayList<>();
    for (Side side : Side.values()) {
      Vec hip = Landmarks.hip(s, side);
      Vec knee = Landmarks.knee(s, side);
      balls.add(new Ball(hip, .056));
      balls.add(new Ball(hip.towards(knee, .5), .046));
      balls.add(new Ball(knee, .035));
      balls.add(new Ball(knee.towards(Landmarks.ankle(s, side), .32), .0365));
      balls.add(new Ball(s.limb(Limb.FOOT, side).point(-.022, -.022, 0), .019));
      balls.add(new Ball(s.limb(Limb.FOOT, side).point(.065, -.024, 0), .026));
      balls.add(new Ball(Toes.frame(s, side).point(.096, -.027, 0), .0125));
    }
    return balls;
  }
}
