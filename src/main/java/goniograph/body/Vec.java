package goniograph.body;

/** A point or direction in space: X forward, Y up, Z to the person's right; in body heights. */
public record Vec(double x, double y, double z) {
  /** The origin. */
  public static final Vec ZERO = new Vec(0, 0, 0);

  /** Straight up. */
  public static final Vec UP = new Vec(0, 1, 0);

  public Vec plus(Vec o) {
    return new Vec(x + o.x, y + o.y, z + o.z);
  }

  public Vec minus(Vec o) {
    return new Vec(x - o.x, y - o.y, z - o.z);
  }

  public Vec times(double k) {
    return new Vec(x * k, y * k, z * k);
  }

  public double dot(Vec o) {
    return x * o.x + y * o.y + z * o.z;
  }

  public Vec cross(Vec o) {
    return new Vec(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  /** The same direction with length 1; the zero vector stays zero. */
  public Vec unit() {
    double l = length();
    return l < 1e-12 ? ZERO : times(1 / l);
  }

  /** The way from this point to {@code o}, in part: 0 here, 1 there. */
  public Vec towards(Vec o, double part) {
    return plus(o.minus(this).times(part));
  }
}
