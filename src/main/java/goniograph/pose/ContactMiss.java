package goniograph.pose;

/**
 * How far a part is from where its contact says it is.
 *
 * @param contact the contact, as typed, for one side
 * @param cm the distance from what it touches; solved contacts miss by less than .1
 * @param slipCm how far a planted foot is, along what it stands on, from where it was planted
 */
public record ContactMiss(Contact contact, double cm, double slipCm) {
  /** The most a kept contact misses, and the most a planted foot slips, in cm. */
  public static final double MOST_CM = .5;

  public static final double MOST_SLIP_CM = .1;

  /** True where the contact is kept. */
  public boolean kept() {
    return cm <= MOST_CM && slipCm <= MOST_SLIP_CM;
  }
}
