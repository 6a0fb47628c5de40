package goniograph.pose;

import java.util.List;

/** A step: a tread that stands out over its riser. A foot on it says where it is. */
final class StairStep implements Furniture {
  private static final double DEPTH = 34;

  @Override
  public Placed place(Site site) {
    Stand stand = site.underFoot();
    double height = site.wish().heightCm();
    double tread = Math.min(3, height / 3);
    List<Box> boxes =
        List.of(
            stand.box(0, DEPTH, height - tread, height, -30, 30),
            stand.box(2, DEPTH, 0, height - tread, -29, 29));
    return site.placed(boxes, List.of(stand.level(0, DEPTH, height, -30, 30)), stand.origin());
  }
}
