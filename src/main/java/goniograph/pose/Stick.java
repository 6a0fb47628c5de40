package goniograph.pose;

import java.util.List;

/** A stick: across both hands, through one, along the back, or down to the floor. */
final class Stick implements Thing {
  @Override
  public List<Shape> shapes(Hold hold, ThingWish wish) {
    double half = hold.f(wish.sizeCm()) / 2;
    double reach =
        switch (wish.place()) {
          case ON_FLOOR -> hold.span() / 2;
          case ALONG_BACK -> Math.max(half, hold.span() / 2);
          default -> Math.max(half, hold.span() / 2 + hold.f(10));
        };
    return List.of(
        new Shape.Rod(
            hold.frame().point(-reach, 0, 0), hold.frame().point(reach, 0, 0), hold.f(1.4)));
  }
}
