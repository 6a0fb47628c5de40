package goniograph.pose;

import goniograph.body.BasePosture;
import goniograph.body.Landmarks;
import goniograph.body.Vec;
import java.util.List;

/**
 * A cushion or pillow on another support or the floor, under the part that touches it; without one,
 * under the head of a body that lies, else under the hips.
 */
final class Cushion implements Furniture {
  private final double deep;
  private final double wide;

  /** Its measures seen from above, in cm. */
  Cushion(double deep, double wide) {
    this.deep = deep;
    this.wide = wide;
  }

  @Override
  public Placed place(Site site) {
    Vec over = over(site);
    Stand stand = new Stand(site.body(), new Vec(over.x(), 0, over.z()), Where.AHEAD.away());
    double top = site.wish().heightCm();
    double bottom = top - site.wish().thickCm();
    Box box =
        stand
            .box(-deep / 2, deep / 2, bottom, top, -wide / 2, wide / 2)
            .rounded(site.f(site.wish().thickCm() * .42));
    Surface level = stand.level(-deep / 2, deep / 2, top, -wide / 2, wide / 2);
    return site.placed(List.of(box), List.of(level), stand.origin());
  }

  private static Vec over(Site site) {
    return site.touchingPoint()
        .orElseGet(
            () ->
                lies(site.pose().base())
                    ? Landmarks.head(site.start())
                    : site.start().pelvis().origin());
  }

  private static boolean lies(BasePosture base) {
    return switch (base) {
      case LYING_ON_BACK, LYING_ON_FRONT, LYING_ON_LEFT_SIDE, LYING_ON_RIGHT_SIDE -> true;
      default -> false;
    };
  }
}
