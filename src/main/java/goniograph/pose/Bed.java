package goniograph.pose;

import goniograph.body.BasePosture;
import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A bed: mattress, frame, legs and a headboard; along the body, or across behind who sits on it.
 */
final class Bed implements Furniture {
  private static final double MATTRESS = 17;
  private static final double FRAME = 9;

  @Override
  public Placed place(Site site) {
    return site.pose().base() == BasePosture.SITTING ? edge(site) : along(site);
  }

  private static Placed along(Site site) {
    Below below = Below.of(site, 200);
    double half = below.lengthCm() / 2;
    double top = site.wish().heightCm();
    Stand stand = below.stand();
    List<Box> boxes = new ArrayList<>(boxes(site, stand, -half, half, 45));
    boxes.add(stand.box(half, half + 4, 0, top + 28, -46, 46));
    return site.placed(boxes, List.of(stand.level(-half, half, top, -45, 45)), stand.origin());
  }

  /** Its near edge 5 cm behind the knees. */
  private static Placed edge(Site site) {
    double knees =
        Arrays.stream(Side.values())
            .mapToDouble(side -> Landmarks.knee(site.start(), side).x())
            .min()
            .orElse(0);
    Vec near = new Vec(knees - site.f(5), 0, site.start().pelvis().origin().z());
    Stand stand = new Stand(site.body(), near, Where.BEHIND.away());
    Surface level = stand.level(0, 90, site.wish().heightCm(), -100, 100);
    return site.placed(boxes(site, stand, 0, 90, 100), List.of(level), near);
  }

  private static List<Box> boxes(Site site, Stand stand, double in1, double in2, double half) {
    double top = site.wish().heightCm();
    double mattress = Math.max(top / 2, top - MATTRESS);
    double frame = Math.max(top / 4, mattress - FRAME);
    List<Box> boxes = new ArrayList<>(stand.legs(in1 + 3, in2 - 3, frame, half - 3, 6));
    boxes.add(stand.box(in1, in2, frame, mattress, -half, half));
    boxes.add(stand.box(in1, in2, mattress, top, -half, half).rounded(site.f(4)));
    return boxes;
  }
}
