package goniograph.body;

/** A segment's frame in the world: where its proximal joint is and how its axes lie. */
public record Frame(Vec origin, Turn axes) {
  /** A point given in this frame, in the world. */
  public Vec point(Vec local) {
    return origin.plus(axes.apply(local));
  }

  /** A point given in this frame, in the world. */
  public Vec point(double x, double y, double z) {
    return point(new Vec(x, y, z));
  }
}
