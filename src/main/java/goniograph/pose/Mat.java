package goniograph.pose;

import java.util.List;

/** A mat below the whole body. */
final class Mat implements Furniture {
  @Override
  public Placed place(Site site) {
    Below below = Below.of(site, 110);
    double top = site.wish().heightCm();
    double half = below.lengthCm() / 2;
    return site.placed(
        List.of(below.stand().box(-half, half, 0, top, -35, 35)),
        List.of(below.stand().level(-half, half, top, -35, 35)),
        below.stand().origin());
  }
}
