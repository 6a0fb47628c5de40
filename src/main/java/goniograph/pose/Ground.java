package goniograph.pose;

import goniograph.body.Vec;
import java.util.List;

/** The floor: a face without a box. */
final class Ground implements Furniture {
  private static final double FAR = 20;

  @Override
  public Placed place(Site site) {
    Surface level = new Surface(new Vec(-FAR, 0, -FAR), new Vec(FAR, 0, FAR), Vec.UP);
    return site.placed(List.of(), List.of(level), Vec.ZERO);
  }
}
