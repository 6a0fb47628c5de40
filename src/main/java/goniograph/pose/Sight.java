package goniograph.pose;

import goniograph.body.Vec;
import java.util.List;
import java.util.function.Predicate;

/** How much of a body is seen from one direction, by points along its parts. */
record Sight(List<Capsule> body, List<Box> boxes, Vec toViewer) {
  private static final int POINTS = 5;

  /** The visible share of some parts; 0 where there are none. */
  double seen(Predicate<Capsule> which) {
    return body.stream().filter(which).mapToDouble(this::seen).average().orElse(0);
  }

  private double seen(Capsule part) {
    double seen = 0;
    for (int i = 0; i < POINTS; i++) {
      Vec point = part.from().towards(part.to(), (i + .5) / POINTS);
      seen += hidden(part, point) ? 0 : 1.0 / POINTS;
    }
    return seen;
  }

  private boolean hidden(Capsule part, Vec point) {
    return body.stream()
            .anyMatch(o -> !o.equals(part) && !o.joins(part) && o.hides(point, toViewer))
        || boxes.stream().anyMatch(box -> stands(box, point));
  }

  /** True where a box stands between a point and the viewer. */
  private boolean stands(Box box, Vec point) {
    Vec from = box.axes().invert(point.minus(box.centre()));
    Vec way = box.axes().invert(toViewer);
    double[] in = {.01, 1e9};
    clip(in, from.x(), way.x(), box.half().x());
    clip(in, from.y(), way.y(), box.half().y());
    clip(in, from.z(), way.z(), box.half().z());
    return in[0] < in[1];
  }

  /** Narrows a stretch of the line of sight to what lies between two faces of a box. */
  private static void clip(double[] in, double from, double way, double half) {
    if (Math.abs(way) < 1e-9) {
      in[1] = Math.abs(from) < half ? in[1] : in[0];
      return;
    }
    double a = (-half - from) / way;
    double b = (half - from) / way;
    in[0] = Math.max(in[0], Math.min(a, b));
    in[1] = Math.min(in[1], Math.max(a, b));
  }
}
