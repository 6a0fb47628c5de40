package goniograph.pose;

import goniograph.matter.Spellings;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The things that can be held or laid to the body, each with the class that shapes it. A new one is
 * a {@link Thing} and a line here. Sizes in cm are those of usual household pieces (common
 * practice, no source).
 */
public enum ThingKind {
  BALL(20, 10, new RoundBall()),
  TOWEL(26, 2.5, new Towel()),
  STICK(100, 1.4, new Stick()),
  DUMBBELL(20, 1.4, new Dumbbell()),
  CUSHION(38, 8, new Padding(38)),
  PILLOW(55, 8, new Padding(36)),
  BOTTLE(21, 3.5, new Bottle());

  private final double usualSizeCm;
  private final double gripCm;
  private final Thing thing;

  ThingKind(double usualSizeCm, double gripCm, Thing thing) {
    this.usualSizeCm = usualSizeCm;
    this.gripCm = gripCm;
    this.thing = thing;
  }

  /** Its length, of a ball its diameter, where the pose names none. */
  double usualSizeCm() {
    return usualSizeCm;
  }

  /** Half its thickness where a hand closes round it. */
  double gripCm() {
    return gripCm;
  }

  /** The thing an author's word names. */
  static Optional<ThingKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }

  /** True for what is held in one hand, so that each hand holds one of its own. */
  boolean single() {
    return this == DUMBBELL || this == BOTTLE;
  }

  List<Shape> shapes(Hold hold, ThingWish wish) {
    return thing.shapes(hold, wish);
  }

  /** The author's word. */
  public String word() {
    return Spellings.word(this);
  }
}
