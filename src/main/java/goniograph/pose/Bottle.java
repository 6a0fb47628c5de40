package goniograph.pose;

import java.util.List;

/** A water bottle, its cap on the thumb's side. */
final class Bottle implements Thing {
  @Override
  public List<Shape> shapes(Hold hold, ThingWish wish) {
    double half = hold.f(wish.sizeCm()) / 2;
    return List.of(
        Dumbbell.rod(hold, -half, half, hold.f(3.3)),
        Dumbbell.rod(hold, half, half + hold.f(2.5), hold.f(2.2)),
        Dumbbell.rod(hold, half + hold.f(2.5), half + hold.f(5), hold.f(1.5)));
  }
}
