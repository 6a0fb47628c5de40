package goniograph.pose;

import java.util.List;

/** A ball; between two hands or knees it is as large as they leave it. */
final class RoundBall implements Thing {
  @Override
  public List<Shape> shapes(Hold hold, ThingWish wish) {
    double wished = hold.f(wish.sizeCm()) / 2;
    double room = hold.gap() / 2;
    boolean soft = room > .6 * wished && room < 1.4 * wished;
    double radius = soft ? room : wished;
    boolean onPalm = hold.gap() == 0;
    return List.of(
        new Shape.Ball(onPalm ? hold.frame().point(0, radius, 0) : hold.centre(), radius));
  }
}
