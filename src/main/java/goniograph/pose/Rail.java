package goniograph.pose;

import java.util.List;

/** A hand rail on two posts. */
final class Rail implements Furniture {
  @Override
  public Placed place(Site site) {
    Stand stand = site.beside();
    double height = site.wish().heightCm();
    List<Box> boxes =
        List.of(
            stand.box(0, 4.5, height - 4.5, height, -55, 55),
            stand.box(.5, 4, 0, height - 4.5, -48, -44.5),
            stand.box(.5, 4, 0, height - 4.5, 44.5, 48));
    return site.placed(boxes, List.of(stand.level(0, 4.5, height, -55, 55)), stand.origin());
  }
}
