package goniograph.body;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How the person in the drawings is built: shape alone. The skeleton, and with it every angle and
 * every contact, is the same for all builds. The amounts are the house's own.
 */
public enum Build {
  ADULT(0, 0, 0, 0, 0),
  /** A rounder upper back, a fuller waist, thinner limbs. */
  OLDER(.02, .10, -.05, 0, .011),
  LARGER(.20, .34, .26, .02, 0),
  THINNER(-.10, -.12, -.12, 0, 0),
  /** A larger head and a rounder trunk; furniture is drawn to the child's scale. */
  CHILD(-.06, .04, -.06, .20, 0);

  private final double width;
  private final double depth;
  private final double limbs;
  private final double head;
  private final double rounding;

  Build(double width, double depth, double limbs, double head, double rounding) {
    this.width = width;
    this.depth = depth;
    this.limbs = limbs;
    this.head = head;
    this.rounding = rounding;
  }

  /** How much wider the waist is, as a fraction; negative for less. */
  public double width() {
    return width;
  }

  /** How much deeper the waist is from front to back. */
  public double depth() {
    return depth;
  }

  /** How much thicker thighs and upper arms are. */
  public double limbs() {
    return limbs;
  }

  /** How much larger the head is. */
  public double head() {
    return head;
  }

  /** How far the upper back stands out, in body heights. */
  public double rounding() {
    return rounding;
  }

  /** The clinic file's word, for instance {@code older}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** All words, in order. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Build::word).toList();
  }

  /** The build a word names. */
  public static Optional<Build> of(String word) {
    return Arrays.stream(values()).filter(build -> build.word().equals(word)).findFirst();
  }
}
