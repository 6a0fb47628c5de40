package goniograph.pose;

import goniograph.body.JointAngles;
import goniograph.body.Side;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is true of the solved body at one moment.
 *
 * @param name the key frame's name; "" between
 * @param angles every joint's solved angle, in author words
 * @param leanDegrees the chest's inclination from vertical, forward positive
 * @param spineFlexionDegrees lumbar plus thoracic flexion
 * @param craniovertebralDegrees from the horizontal at C7 to the ear
 * @param misses every contact with how far it is missed
 * @param slipCm how far the farthest planted foot is from where it was planted
 * @param belowFloorCm how deep the deepest part lies below the floor
 * @param deepest the deepest part's name
 * @param marginCm the centre of mass inside the base of support, negative outside; empty where
 *     nothing bears
 * @param marginWithoutHandsCm the same with no hand counted
 * @param feet how each foot stands
 * @param loads static moments
 * @param bandCm the band's length, where there is a band
 */
public record MomentFacts(
    String name,
    JointAngles angles,
    double leanDegrees,
    double spineFlexionDegrees,
    double craniovertebralDegrees,
    List<ContactMiss> misses,
    double slipCm,
    double belowFloorCm,
    String deepest,
    Optional<Double> marginCm,
    Optional<Double> marginWithoutHandsCm,
    Map<Side, FootState> feet,
    Loads loads,
    Optional<Double> bandCm) {
  public MomentFacts {
    misses = List.copyOf(misses);
    feet = Map.copyOf(feet);
  }

  /** The largest contact miss in cm; 0 where nothing touches. */
  public double worstMissCm() {
    return misses.stream().mapToDouble(ContactMiss::cm).max().orElse(0);
  }

  /** True where this foot bears weight. */
  public boolean bears(Side side) {
    return feet.get(side) != FootState.OFF;
  }
}
