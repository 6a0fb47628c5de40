package goniograph.body;

import java.util.ArrayList;
import java.util.List;

/**
 * The four fingers: where each knuckle lies in the hand's frame and how long the three parts are,
 * in body heights. Proportions of the parts: Buchholz, Armstrong and Goldstein 1992, Ergonomics
 * 35:261 (from memory, not checked), drawn to a hand of .100; places and spread are the house's
 * own.
 */
public enum Finger {
  INDEX(.0185, -.047, 3, .0235, .0137, .0093),
  MIDDLE(.0063, -.048, 0, .0254, .0163, .0103),
  RING(-.0062, -.046, -3, .0233, .0158, .0102),
  LITTLE(-.0180, -.043, -7, .0195, .0112, .0089);

  private final double ahead;
  private final double along;
  private final double spread;
  private final double[] parts;

  Finger(double ahead, double along, double spread, double... parts) {
    this.ahead = ahead;
    this.along = along;
    this.spread = Math.toRadians(spread);
    this.parts = parts;
  }

  /** Knuckle, middle joint, end joint and tip in the world. */
  public List<Vec> joints(Skeleton s, Side side) {
    Fingers bent = s.fingers(side);
    Frame hand = s.limb(Limb.HAND, side);
    double apart = spread * Math.cos(Math.toRadians(bent.knuckles()));
    Vec at = new Vec(ahead, along, 0);
    List<Vec> joints = new ArrayList<>(List.of(hand.point(at)));
    double[] turned = bent.turned();
    for (int i = 0; i < parts.length; i++) {
      at = at.plus(way(turned[i], apart, side).times(parts[i]));
      joints.add(hand.point(at));
    }
    return joints;
  }

  /** The direction of a part that is bent to the palm and spread to the thumb's side. */
  private static Vec way(double bend, double apart, Side side) {
    return new Vec(
        Math.sin(apart),
        -Math.cos(bend) * Math.cos(apart),
        -side.sign() * Math.sin(bend) * Math.cos(apart));
  }
}
