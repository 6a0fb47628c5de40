package goniograph.pose;

import goniograph.body.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A support as a pose file asks for it.
 *
 * @param name how contacts call it: its kind, or {@code second chair}
 * @param kind what it is
 * @param where where it stands; empty for its usual place
 * @param heightCm its upper face above the floor
 * @param thickCm from its upper face down to what it lies or stands on
 * @param distanceCm horizontally from the nearest outline of trunk and legs in the start pose, arms
 *     left out, to the support's near edge; empty where the contacts or the usual place decide
 * @param alongCm how far its middle lies ahead of the hips; for a support ahead or behind, to the
 *     right; empty for beside the hips or at the hand that touches it
 * @param arms true for a chair with arm rests
 */
public record SupportWish(
    String name,
    SupportKind kind,
    Optional<Where> where,
    double heightCm,
    double thickCm,
    Optional<Double> distanceCm,
    Optional<Double> alongCm,
    boolean arms) {

  static final SupportWish FLOOR =
      new SupportWish(
          SupportKind.FLOOR.word(),
          SupportKind.FLOOR,
          Optional.empty(),
          0,
          0,
          Optional.empty(),
          Optional.empty(),
          false);

  /** The side of the person it stands on; empty for ahead, behind and below. */
  public Optional<Side> side() {
    return where.flatMap(Where::side);
  }

  /** The words by which contacts may call it and its places. */
  List<String> targets() {
    List<String> targets = new ArrayList<>(List.of(name));
    if (kind == SupportKind.CHAIR) {
      targets.add(name + " back");
    }
    if (arms) {
      targets.add(name + " arms");
    }
    return targets;
  }

  /** Left and right swapped. */
  SupportWish mirrored() {
    return new SupportWish(
        name,
        kind,
        where.map(Where::mirrored),
        heightCm,
        thickCm,
        distanceCm,
        side().isEmpty() ? alongCm.map(cm -> -cm) : alongCm,
        arms);
  }
}
