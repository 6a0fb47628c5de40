package goniograph.pose;

import java.util.List;

/** A box. */
final class Crate implements Furniture {
  @Override
  public Placed place(Site site) {
    Stand stand = site.atHands(site.underFoot());
    double height = site.wish().heightCm();
    return site.placed(
        List.of(stand.box(0, 40, 0, height, -22, 22)),
        List.of(stand.level(0, 40, height, -22, 22)),
        stand.origin());
  }
}
