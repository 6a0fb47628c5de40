package goniograph.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A segment's mass gathered in its centre.
 *
 * @param segment which segment
 * @param side its side; empty for the trunk
 * @param centre where its centre of mass lies, in body heights
 */
public record MassPoint(SegmentMass segment, Optional<Side> side, Vec centre) {

  /** All segments of a skeleton; their masses sum to 1. */
  public static List<MassPoint> of(Skeleton skeleton) {
    List<MassPoint> points = new ArrayList<>(trunk(skeleton));
    for (Side side : Side.values()) {
      for (Limb limb : Limb.values()) {
        points.add(
            new MassPoint(
                SegmentMass.of(limb), Optional.of(side), limbCentre(skeleton, limb, side)));
      }
    }
    return points;
  }

  /** Where the whole body's centre of mass lies. */
  public static Vec centreOfMass(List<MassPoint> points) {
    Vec sum = Vec.ZERO;
    double mass = 0;
    for (MassPoint point : points) {
      sum = sum.plus(point.centre.times(point.segment.mass()));
      mass += point.segment.mass();
    }
    return sum.times(1 / mass);
  }

  /** The mass in kg on a body. */
  public double kg(Body body) {
    return segment.mass() * body.massKg();
  }

  /** The trunk's borders lie in the middle of its sections, ahead of the spine. */
  private static List<MassPoint> trunk(Skeleton s) {
    Vec neck = section(s, SpineJoint.C7);
    Vec waist = section(s, SpineJoint.T11).towards(section(s, SpineJoint.L1), .5);
    Vec loins = section(s, SpineJoint.L3);
    return List.of(
        between(SegmentMass.HEAD_AND_NECK, neck, Landmarks.ears(s)),
        between(SegmentMass.THORAX, neck, waist),
        between(SegmentMass.ABDOMEN, waist, loins),
        between(SegmentMass.PELVIS, loins, s.pelvis().origin()));
  }

  private static MassPoint between(SegmentMass segment, Vec proximal, Vec distal) {
    return new MassPoint(segment, Optional.empty(), proximal.towards(distal, segment.centre()));
  }

  private static Vec section(Skeleton s, SpineJoint joint) {
    return TrunkSection.at(joint).middle(s);
  }

  private static Vec limbCentre(Skeleton s, Limb limb, Side side) {
    return switch (limb) {
      case HAND -> Landmarks.palm(s, side);
      case FOOT ->
          Landmarks.ankle(s, side).towards(Landmarks.ball(s, side), SegmentMass.FOOT.centre());
      default -> s.limb(limb, side).point(0, -SegmentMass.of(limb).centre() * Lengths.of(limb), 0);
    };
  }
}
