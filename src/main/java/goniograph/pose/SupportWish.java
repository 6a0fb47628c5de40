package goniograph.pose;

import goniograph.body.Side;
import java.util.Optional;

/**
 * A support as a pose file asks for it.
 *
 * @param kind what it is
 * @param side the side of the person it stands on; empty for ahead
 * @param heightCm its upper face above the floor
 * @param distanceCm horizontally from the nearest outline of trunk and legs in the start pose, arms
 *     left out, to the support's near edge; empty where the contacts or the usual place decide
 * @param alongCm how far its middle lies ahead of the hips; for a support ahead, to the right
 */
public record SupportWish(
    SupportKind kind,
    Optional<Side> side,
    double heightCm,
    Optional<Double> distanceCm,
    double alongCm) {

  /** Left and right swapped. */
  SupportWish mirrored() {
    return new SupportWish(
        kind, side.map(Side::other), heightCm, distanceCm, side.isEmpty() ? -alongCm : alongCm);
  }
}
