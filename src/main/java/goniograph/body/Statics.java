package goniograph.body;

import java.util.List;

/**
 * Static moments of free chains: what gravity and held loads ask of a joint while nothing moves.
 * Lengths in metres, forces in newtons, moments in newton metres.
 */
public final class Statics {
  /** Standard gravity, rounded, in m/s2. */
  public static final double GRAVITY = 9.81;

  private Statics() {}

  /**
   * A force that acts somewhere.
   *
   * @param at where, in metres
   * @param newton its size and direction
   */
  public record Force(Vec at, Vec newton) {
    /** The weight of a mass in kg. */
    public static Force weight(Vec at, double kg) {
      return new Force(at, Vec.UP.times(-kg * GRAVITY));
    }
  }

  /** The moment of forces about a point, right-handed. */
  public static Vec moment(Vec about, List<Force> forces) {
    return forces.stream()
        .map(force -> force.at().minus(about).cross(force.newton()))
        .reduce(Vec.ZERO, Vec::plus);
  }

  /** The force of the one muscle that balances a moment at a lever arm in metres. */
  public static double muscleForce(double moment, double leverArm) {
    return Math.abs(moment) / leverArm;
  }
}
