package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A part of the body as a ball drawn along a line: enough to tell what hides what. Radii are those
 * of the drawn body halfway along each part.
 *
 * @param limb the limb segment; empty for head and trunk
 * @param radius in body heights
 */
record Capsule(Optional<Limb> limb, Optional<Side> side, Vec from, Vec to, double radius) {

  /** A whole body. */
  static List<Capsule> of(Skeleton s) {
    List<Capsule> all = new ArrayList<>();
    for (Side side : Side.values()) {
      all.add(limb(s, side, Limb.UPPER_ARM, Landmarks.elbow(s, side), .031));
      all.add(limb(s, side, Limb.FOREARM, Landmarks.wrist(s, side), .022));
      all.add(limb(s, side, Limb.HAND, Landmarks.fingertip(s, side), .018));
      all.add(limb(s, side, Limb.THIGH, Landmarks.knee(s, side), .048));
      all.add(limb(s, side, Limb.SHANK, Landmarks.ankle(s, side), .032));
      all.add(limb(s, side, Limb.FOOT, Landmarks.ball(s, side), .022));
    }
    all.add(midline(s.pelvis().origin(), s.spine(SpineJoint.T2).origin(), .085));
    all.add(midline(s.spine(SpineJoint.C7).origin(), Landmarks.head(s), .060));
    return all;
  }

  private static Capsule limb(Skeleton s, Side side, Limb limb, Vec to, double radius) {
    return new Capsule(
        Optional.of(limb), Optional.of(side), s.limb(limb, side).origin(), to, radius);
  }

  private static Capsule midline(Vec from, Vec to, double radius) {
    return new Capsule(Optional.empty(), Optional.empty(), from, to, radius);
  }

  /** True where the two meet in a joint, so that neither can be said to hide the other. */
  boolean joins(Capsule other) {
    double apart =
        Math.min(
            Math.min(to.minus(other.from).length(), from.minus(other.to).length()),
            from.minus(other.from).length());
    return apart < .12;
  }

  /** True where this part lies between a point and the viewer. */
  boolean hides(Vec point, Vec toViewer) {
    Vec axis = flat(to.minus(from), toViewer);
    Vec aside = flat(point.minus(from), toViewer);
    double square = axis.dot(axis);
    double along = square < 1e-12 ? 0 : Math.min(1, Math.max(0, aside.dot(axis) / square));
    Vec nearest = from.towards(to, along);
    return aside.minus(axis.times(along)).length() < radius
        && nearest.minus(point).dot(toViewer) > radius / 2;
  }

  private static Vec flat(Vec v, Vec toViewer) {
    return v.minus(toViewer.times(toViewer.dot(v)));
  }
}
