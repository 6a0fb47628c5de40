package goniograph.pose;

/**
 * What a dose puts on a pose besides the body's own weight. The pose says where it acts.
 *
 * @param kg mass of each thing that is held; what both hands hold is shared by them
 * @param bandN the band's tension in N
 */
public record Load(double kg, double bandN) {
  /** Nothing but the body. */
  public static final Load NONE = new Load(0, 0);

  /** A held mass in kg. */
  public static Load mass(double kg) {
    return new Load(kg, 0);
  }

  /** A band's tension in N. */
  public static Load band(double newton) {
    return new Load(0, newton);
  }
}
