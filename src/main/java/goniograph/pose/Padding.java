package goniograph.pose;

import goniograph.body.Vec;
import java.util.List;

/** A cushion or pillow, pressed into the room it has. */
final class Padding implements Thing {
  private final double breadthCm;

  Padding(double breadthCm) {
    this.breadthCm = breadthCm;
  }

  @Override
  public List<Shape> shapes(Hold hold, ThingWish wish) {
    double thick =
        hold.gap() == 0 ? hold.f(8) : Math.min(hold.f(20), Math.max(hold.f(4), hold.gap()));
    Vec half = new Vec(hold.f(wish.sizeCm()) / 2, thick / 2, hold.f(breadthCm) / 2);
    return List.of(new Box(hold.centre(), hold.axes(), half).rounded(.42 * thick));
  }
}
