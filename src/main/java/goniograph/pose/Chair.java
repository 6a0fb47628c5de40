package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A chair with or without arm rests. Behind the person its back rest is behind the trunk and its
 * seat as deep as the thighs allow; elsewhere its seat faces the person, or its back where the back
 * is touched.
 */
final class Chair implements Furniture {
  private static final double DEPTH = 42;
  private static final double HALF = 22;
  private static final double SEAT = 3.5;
  private static final double BACK_FROM = 18;
  private static final double BACK_TO = 42;
  private static final double ARMS = 21;

  @Override
  public Placed place(Site site) {
    if (site.where() == Where.BEHIND) {
      double depth = depth(site);
      Stand stand = new Stand(site.body(), back(site), Where.AHEAD.away());
      return chair(site, stand, depth, stand.origin());
    }
    Stand near = site.atHands(site.beside());
    boolean backFirst = site.touchedAt("back");
    Vec away = near.ahead();
    Vec rest = near.origin().plus(away.times(site.f(backFirst ? 3 : DEPTH)));
    Stand stand = new Stand(site.body(), rest, backFirst ? away : away.times(-1));
    return chair(site, stand, DEPTH, near.origin());
  }

  /** The middle of the back rest's front face. */
  private static Vec back(Site site) {
    double gap = site.touched(part -> part == Part.BACK) ? 0 : site.f(1);
    return new Vec(-site.backwards() - gap, 0, site.start().pelvis().origin().z());
  }

  private static double depth(Site site) {
    double knees =
        Arrays.stream(Side.values())
            .mapToDouble(side -> Landmarks.knee(site.start(), side).x())
            .min()
            .orElse(0);
    return Math.max(30, Math.min(DEPTH, site.body().cm(knees - back(site).x()) - 5));
  }

  private static Placed chair(Site site, Stand stand, double depth, Vec near) {
    double seat = site.wish().heightCm();
    List<Box> boxes = new ArrayList<>();
    boxes.add(stand.box(0, depth, seat - SEAT, seat, -HALF, HALF));
    boxes.add(stand.box(-3, 0, seat + BACK_FROM, seat + BACK_TO, -HALF, HALF));
    for (int side : List.of(-1, 1)) {
      double outer = side * HALF;
      double inner = side * (HALF - 3.5);
      boxes.add(stand.box(depth - 3.5, depth, 0, seat - SEAT, inner, outer));
      boxes.add(stand.box(-3, 0, 0, seat + BACK_FROM, inner, outer));
    }
    Map<String, List<Surface>> places = new LinkedHashMap<>();
    Surface rest = stand.looking(0, seat + BACK_FROM, seat + BACK_TO, -HALF, HALF);
    places.put("back", List.of(stand.level(-3, 0, seat + BACK_TO, -HALF, HALF), rest));
    if (site.wish().arms()) {
      List<Surface> rests = new ArrayList<>();
      for (int side : List.of(-1, 1)) {
        double outer = side * (HALF + 5);
        double inner = side * HALF;
        double front = depth - 6;
        boxes.add(stand.box(-3, front, seat + ARMS - 3, seat + ARMS, inner, outer));
        boxes.add(stand.box(front - 8, front - 4.5, seat - SEAT, seat + ARMS - 3, inner, outer));
        rests.add(stand.level(0, front, seat + ARMS, inner, outer));
      }
      places.put("arms", rests);
    }
    Surface level = stand.level(0, depth, seat, -HALF, HALF);
    return site.placed(boxes, List.of(level, rest), places, near);
  }
}
