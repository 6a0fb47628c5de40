package goniograph.pose;

import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;

/** A stool: a seat on four legs; under the hips, or beside the person where a side is typed. */
final class Stool implements Furniture {
  private static final double HALF = 18;

  @Override
  public Placed place(Site site) {
    Stand stand = stand(site);
    double seat = site.wish().heightCm();
    List<Box> boxes = new ArrayList<>(stand.legs(2, 34, seat - 4, HALF - 2, 3.5));
    boxes.add(stand.box(0, 36, seat - 4, seat, -HALF, HALF));
    return site.placed(boxes, List.of(stand.level(0, 36, seat, -HALF, HALF)), stand.origin());
  }

  private static Stand stand(Site site) {
    if (site.where() != Where.BEHIND) {
      return site.atHands(site.beside());
    }
    Vec hips = site.start().pelvis().origin();
    return new Stand(site.body(), new Vec(hips.x() - site.f(14), 0, hips.z()), Where.AHEAD.away());
  }
}
