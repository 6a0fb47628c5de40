package goniograph.pose;

import java.util.List;

/** A piece of wall. */
final class Wall implements Furniture {
  @Override
  public Placed place(Site site) {
    Stand stand = site.upright();
    double height = site.wish().heightCm();
    return site.placed(
        List.of(stand.box(0, 8, 0, height, -60, 60)),
        List.of(stand.facing(0, 0, height, -60, 60)),
        stand.origin());
  }
}
