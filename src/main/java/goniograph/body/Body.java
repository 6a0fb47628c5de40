package goniograph.body;

/**
 * A person's measures. Every length in the skeleton is a fraction of {@link #heightCm}.
 *
 * @param heightCm standing height in cm, 80 to 230
 * @param massKg body mass in kg, 10 to 300
 */
public record Body(double heightCm, double massKg) {
  /** The body the figures are drawn with: 170 cm, 70 kg. */
  public static final Body ADULT = new Body(170, 70);

  public Body {
    if (heightCm < 80 || heightCm > 230 || massKg < 10 || massKg > 300) {
      throw new IllegalArgumentException("not a person's measures: " + heightCm + " " + massKg);
    }
  }

  /** A length given in cm, as a fraction of body height. */
  public double fraction(double cm) {
    return cm / heightCm;
  }

  /** A length given as a fraction of body height, in cm. */
  public double cm(double fraction) {
    return fraction * heightCm;
  }
}
