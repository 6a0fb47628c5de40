package goniograph.pose;

import goniograph.matter.Spellings;
import java.util.List;

/**
 * The things that can be held or laid to the body, each with the class that shapes it. A new one is
 * a {@link Thing} and a line here. Sizes in cm are those of usual household pieces (common
 * practice, no source).
 */
public enum ThingKind {
  BALL(20, new RoundBall()),
  TOWEL(26, new Towel()),
  STICK(100, new Stick()),
  DUMBBELL(20, new Dumbbell()),
  CUSHION(38, new Padding(38)),
  PILLOW(55, new Padding(36)),
  BOTTLE(21, new Bottle());

  private final double usualSizeCm;
  private final Thing thing;

  ThingKind(double usualSizeCm, Thing thing) {
    this.usualSizeCm = usualSizeCm;
    this.thing = thing;
  }

  /** Its length, of a ball its diameter, where the pose names none. */
  double usualSizeCm() {
    return usualSizeCm;
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
