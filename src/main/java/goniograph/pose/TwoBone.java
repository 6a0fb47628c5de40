package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.Optional;

/**
 * Two rods from a fixed joint to a target, solved in closed form: where the middle joint lies and
 * how far the target is out of reach.
 *
 * @param start the fixed joint
 * @param middle the joint between the rods
 * @param end where the far rod ends: the target, or the nearest reachable point towards it
 * @param bend the direction in which the middle joint stands out, of length 1
 * @param miss how far the end is from the target
 */
record TwoBone(Vec start, Vec middle, Vec end, Vec bend, double miss) {

  /**
   * Solves.
   *
   * @param near length of the rod at the fixed joint
   * @param far length of the other
   * @param pole roughly where the middle joint stands out to
   */
  static TwoBone reach(Vec start, Vec target, double near, double far, Vec pole) {
    Vec way = target.minus(start);
    Vec u = way.unit();
    double wanted = way.length();
    double reach = Math.max(Math.abs(near - far) * 1.001, Math.min(wanted, near + far - 1e-9));
    Vec n = pole.minus(u.times(pole.dot(u))).unit();
    double along = (near * near - far * far + reach * reach) / (2 * reach);
    double out = Math.sqrt(Math.max(0, near * near - along * along));
    return new TwoBone(
        start,
        start.plus(u.times(along)).plus(n.times(out)),
        start.plus(u.times(reach)),
        n,
        Math.abs(wanted - reach));
  }

  /**
   * The same reach with the middle joint swung about the line from start to end, as little as
   * needed to bring it to a height: outward, else inward, and unswung where a quarter turn is not
   * enough.
   *
   * @param outward roughly where it swings to
   */
  TwoBone above(double height, Vec outward) {
    Vec side = end.minus(start).unit().cross(bend);
    Vec out = side.dot(outward) < 0 ? side.times(-1) : side;
    return swung(height, out).or(() -> swung(height, out.times(-1))).orElse(this);
  }

  private Optional<TwoBone> swung(double height, Vec across) {
    Vec u = end.minus(start).unit();
    Vec foot = start.plus(u.times(middle.minus(start).dot(u)));
    double radius = middle.minus(foot).length();
    for (int degrees = 0; degrees <= 90; degrees += 2) {
      double swing = Math.toRadians(degrees);
      Vec n = bend.times(Math.cos(swing)).plus(across.times(Math.sin(swing)));
      Vec joint = foot.plus(n.times(radius));
      if (joint.y() >= height) {
        return Optional.of(new TwoBone(start, joint, end, n, miss));
      }
    }
    return Optional.empty();
  }

  /** The flexion axis of a knee, whose joint stands out to the front. */
  Vec kneeAxis() {
    return bend.cross(start.minus(end).unit());
  }

  /** The flexion axis of an elbow, whose joint stands out to the back. */
  Vec elbowAxis() {
    return kneeAxis().times(-1);
  }

  /** The frame of the near segment about a flexion axis. */
  Frame nearFrame(Vec axis) {
    return frame(start, middle, axis);
  }

  /** The frame of the far segment about a flexion axis. */
  Frame farFrame(Vec axis) {
    return frame(middle, end, axis);
  }

  private static Frame frame(Vec from, Vec to, Vec axis) {
    Vec y = from.minus(to).unit();
    return new Frame(from, new Turn(y.cross(axis), y, axis));
  }
}
