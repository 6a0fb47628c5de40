package goniograph.body;

/** Angles of posture that are no joint's own, in degrees. */
public final class Posture {
  private Posture() {}

  /**
   * Lean: the inclination of the chest from vertical, forward positive. With no bend or turn it is
   * pelvis tilt plus lumbar and thoracic flexion.
   */
  public static double lean(Skeleton skeleton) {
    Turn chest = skeleton.spine(SpineJoint.T2).axes();
    Vec forward = Vec.UP.cross(chest.z()).unit();
    double inclination = Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, chest.y().y()))));
    return chest.y().dot(forward) < 0 ? -inclination : inclination;
  }

  /**
   * Craniovertebral angle: from the horizontal through the skin over C7 to the line to the ear
   * canal; negative where the ear hangs below C7.
   */
  public static double craniovertebral(Skeleton skeleton) {
    Vec line = Landmarks.ears(skeleton).minus(Landmarks.c7Skin(skeleton));
    Vec forward = Vec.UP.cross(skeleton.spine(SpineJoint.T2).axes().z()).unit();
    return Math.toDegrees(Math.atan2(line.y(), line.dot(forward)));
  }
}
