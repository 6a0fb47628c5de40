package goniograph.body;

/** A rotation: its columns are the turned frame's axes x, y, z in the frame outside it. */
public record Turn(Vec x, Vec y, Vec z) {
  /** No rotation. */
  public static final Turn NONE = new Turn(new Vec(1, 0, 0), new Vec(0, 1, 0), new Vec(0, 0, 1));

  /** About X by {@code degrees}, right-handed. */
  public static Turn aboutX(double degrees) {
    double c = Math.cos(Math.toRadians(degrees));
    double s = Math.sin(Math.toRadians(degrees));
    return new Turn(new Vec(1, 0, 0), new Vec(0, c, s), new Vec(0, -s, c));
  }

  /** About Y by {@code degrees}, right-handed. */
  public static Turn aboutY(double degrees) {
    double c = Math.cos(Math.toRadians(degrees));
    double s = Math.sin(Math.toRadians(degrees));
    return new Turn(new Vec(c, 0, -s), new Vec(0, 1, 0), new Vec(s, 0, c));
  }

  /** About Z by {@code degrees}, right-handed. */
  public static Turn aboutZ(double degrees) {
    double c = Math.cos(Math.toRadians(degrees));
    double s = Math.sin(Math.toRadians(degrees));
    return new Turn(new Vec(c, s, 0), new Vec(-s, c, 0), new Vec(0, 0, 1));
  }

  /** By the shortest way from one direction to another; none where they lie on one line. */
  public static Turn between(Vec from, Vec to) {
    Vec axis = from.cross(to);
    if (axis.length() < 1e-12) {
      return NONE;
    }
    Vec z = axis.unit();
    Turn before = new Turn(from.unit(), z.cross(from.unit()), z);
    Turn after = new Turn(to.unit(), z.cross(to.unit()), z);
    return after.then(before.inverse());
  }

  /** A vector given in the turned frame, seen from outside. */
  public Vec apply(Vec v) {
    return x.times(v.x()).plus(y.times(v.y())).plus(z.times(v.z()));
  }

  /** A vector given outside, seen from the turned frame. */
  public Vec invert(Vec v) {
    return new Vec(x.dot(v), y.dot(v), z.dot(v));
  }

  /** First this, then {@code inner} within it: the matrix product this times inner. */
  public Turn then(Turn inner) {
    return new Turn(apply(inner.x), apply(inner.y), apply(inner.z));
  }

  /** The opposite rotation. */
  public Turn inverse() {
    return new Turn(
        new Vec(x.x(), y.x(), z.x()), new Vec(x.y(), y.y(), z.y()), new Vec(x.z(), y.z(), z.z()));
  }
}
