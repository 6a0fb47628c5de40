package goniograph.pose;

import java.util.List;

/** A worktop with cupboards below, which stand back from its near edge, on a plinth. */
final class Counter implements Furniture {
  @Override
  public Placed place(Site site) {
    Stand stand = site.beside();
    double height = site.wish().heightCm();
    List<Box> boxes =
        List.of(
            stand.box(0, 60, height - 4, height, -45, 45),
            stand.box(3, 60, 9, height - 4, -43, 43),
            stand.box(9, 60, 0, 9, -43, 43));
    return site.placed(boxes, List.of(stand.level(0, 60, height, -45, 45)), stand.origin());
  }
}
