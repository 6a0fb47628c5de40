package goniograph.pose;

import goniograph.body.Vec;
import java.util.List;

/** A towel: rolled, as thick as a fist or the gap allows; or folded, its seam the fold. */
final class Towel implements Thing {
  @Override
  public List<Shape> shapes(Hold hold, ThingWish wish) {
    double half = hold.f(wish.sizeCm()) / 2;
    double gap = hold.gap() == 0 ? hold.f(6) : Math.min(hold.f(16), hold.gap());
    if (wish.folded()) {
      Vec size = new Vec(half, Math.max(hold.f(2.5), gap / 2), .75 * half);
      return List.of(new Box(hold.centre(), hold.axes(), size).rounded(hold.f(2.4)));
    }
    double radius = hold.span() > 0 ? hold.f(2.5) : Math.max(hold.f(2.5), gap / 2);
    double reach = Math.max(half, hold.span() / 2 + hold.f(8));
    return List.of(
        new Shape.Rod(hold.frame().point(-reach, 0, 0), hold.frame().point(reach, 0, 0), radius));
  }
}
