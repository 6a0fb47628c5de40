package goniograph.pose;

import java.util.List;

/** A hand weight: a handle between two discs that grow with the mass. */
final class Dumbbell implements Thing {
  @Override
  public List<Shape> shapes(Hold hold, ThingWish wish) {
    double half = hold.f(wish.sizeCm()) / 2;
    double disc = half - hold.f(3.5);
    double radius = hold.f(4 + .9 * Math.sqrt(wish.massKg().orElse(1.0)));
    return List.of(
        rod(hold, -disc, disc, hold.f(1.5)),
        rod(hold, -half, -disc, radius),
        rod(hold, disc, half, radius));
  }

  static Shape rod(Hold hold, double from, double to, double radius) {
    return new Shape.Rod(hold.frame().point(from, 0, 0), hold.frame().point(to, 0, 0), radius);
  }
}
