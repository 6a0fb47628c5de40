package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * The ground under a body that lies or sits along it.
 *
 * @param stand from the middle of the ground towards the head
 * @param lengthCm so that the body has 14 cm more at either end
 */
record Below(Stand stand, double lengthCm) {

  static Below of(Site site, double leastCm) {
    Skeleton s = site.start();
    List<Vec> points = new ArrayList<>(List.of(Landmarks.head(s), s.pelvis().origin()));
    for (Side side : Side.values()) {
      points.add(Landmarks.toe(s, side));
      points.add(Landmarks.heel(s, side));
      points.add(Landmarks.fingertip(s, side));
    }
    double from = points.stream().mapToDouble(Vec::x).min().orElse(0) - site.f(14);
    double to = points.stream().mapToDouble(Vec::x).max().orElse(0) + site.f(14);
    Vec middle = new Vec((from + to) / 2, 0, s.pelvis().origin().z());
    boolean headBehind = Landmarks.head(s).x() < feet(s);
    Stand stand = new Stand(site.body(), middle, new Vec(headBehind ? -1 : 1, 0, 0));
    return new Below(stand, Math.max(leastCm, site.body().cm(to - from)));
  }

  private static double feet(Skeleton s) {
    return Landmarks.ankle(s, Side.LEFT).towards(Landmarks.ankle(s, Side.RIGHT), .5).x();
  }
}
