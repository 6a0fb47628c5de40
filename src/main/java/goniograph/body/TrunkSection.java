package goniograph.body;

import java.util.List;
import java.util.Optional;

/**
 * An elliptic section of the trunk, across the frame it is fixed to; the house's own shape.
 *
 * @param joint the spine joint whose frame carries it; empty for the pelvis
 * @param centre its middle in that frame
 * @param halfWidth half axis to the side (Z)
 * @param halfDepth half axis to the front (X)
 */
public record TrunkSection(
    Optional<SpineJoint> joint, Vec centre, double halfWidth, double halfDepth) {
  /** From below: three of the pelvis, then up to the neck. */
  public static final List<TrunkSection> ALL =
      List.of(
          pelvis(-.010, -.050, .070, .050),
          pelvis(-.014, -.010, .103, .068),
          pelvis(-.012, .035, .097, .064),
          at(SpineJoint.L3, .006, -.018, .082, .057),
          at(SpineJoint.L1, .012, -.010, .077, .056),
          at(SpineJoint.T11, .022, 0, .083, .061),
          at(SpineJoint.T8, .036, 0, .092, .066),
          at(SpineJoint.T5, .038, 0, .094, .062),
          at(SpineJoint.T2, .022, -.008, .070, .046),
          at(SpineJoint.C7, .010, -.004, .040, .034));

  /** The section that a spine joint carries: L3, L1, T11, T8, T5, T2 or C7. */
  public static TrunkSection at(SpineJoint joint) {
    return ALL.stream()
        .filter(section -> section.joint.equals(Optional.of(joint)))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(joint.toString()));
  }

  /** The frame that carries this section. */
  public Frame frame(Skeleton skeleton) {
    return joint.map(skeleton::spine).orElse(skeleton.pelvis());
  }

  /** The middle of the section in the world. */
  public Vec middle(Skeleton skeleton) {
    return frame(skeleton).point(centre);
  }

  /** The section's point that lies farthest in a direction of length 1. */
  public Vec farthest(Skeleton skeleton, Vec direction) {
    Turn axes = frame(skeleton).axes();
    double x = halfDepth * axes.x().dot(direction);
    double z = halfWidth * axes.z().dot(direction);
    double reach = Math.hypot(x, z);
    Vec middle = middle(skeleton);
    return reach < 1e-12
        ? middle
        : middle
            .plus(axes.x().times(halfDepth * x / reach))
            .plus(axes.z().times(halfWidth * z / reach));
  }

  private static TrunkSection pelvis(double x, double y, double halfWidth, double halfDepth) {
    return new TrunkSection(Optional.empty(), new Vec(x, y, 0), halfWidth, halfDepth);
  }

  private static TrunkSection at(
      SpineJoint joint, double x, double y, double halfWidth, double halfDepth) {
    return new TrunkSection(Optional.of(joint), new Vec(x, y, 0), halfWidth, halfDepth);
  }
}
