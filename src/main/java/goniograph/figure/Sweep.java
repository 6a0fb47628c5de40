package goniograph.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * The union of convex shapes strung along an axis, by a line that sweeps along it: between two
 * corners every edge is straight, so the union is the highest and the lowest of them. Exact where
 * the sweeping line always meets the union in one piece; what is not such a string is refused. Many
 * times faster than a general overlay.
 */
final class Sweep {
  /** Corners nearer than this to the line between their neighbours are left out, mm. */
  private static final double TOLERANCE = .004;

  private static final double SAME = 1e-9;

  /** Between its ends a string is looked at in about so many places. */
  private static final int PLACES = 200;

  private final List<Link> links = new ArrayList<>();
  private final List<Coordinate> upper = new ArrayList<>();
  private final List<Coordinate> lower = new ArrayList<>();
  private double slack;

  private Sweep() {}

  /**
   * The union of the hulls of neighbouring outlines; empty where they lie too much on top of each
   * other to have an axis.
   */
  static Optional<Geometry> chain(List<List<Coordinate>> rims) {
    Coordinate from = middle(rims.get(0));
    Coordinate to = middle(rims.get(rims.size() - 1));
    double length = from.distance(to);
    if (rims.size() < 2 || length < SAME) {
      return Optional.empty();
    }
    double cos = (to.x - from.x) / length;
    double sin = (to.y - from.y) / length;
    Sweep sweep = new Sweep();
    Coordinate[] last = sorted(rims.get(0), cos, sin);
    for (List<Coordinate> rim : rims.subList(1, rims.size())) {
      Coordinate[] next = sorted(rim, cos, sin);
      sweep.links.add(new Link(merged(last, next)));
      last = next;
    }
    return sweep.swept() ? Optional.of(sweep.area(cos, sin)) : Optional.empty();
  }

  private static Coordinate middle(List<Coordinate> rim) {
    double x = 0;
    double y = 0;
    for (Coordinate c : rim) {
      x += c.x / rim.size();
      y += c.y / rim.size();
    }
    return new Coordinate(x, y);
  }

  /** An outline with the axis level, from left to right. */
  private static Coordinate[] sorted(List<Coordinate> rim, double cos, double sin) {
    Coordinate[] turned = new Coordinate[rim.size()];
    for (int i = 0; i < turned.length; i++) {
      Coordinate c = rim.get(i);
      turned[i] = new Coordinate(cos * c.x + sin * c.y, cos * c.y - sin * c.x);
    }
    Arrays.sort(turned);
    return turned;
  }

  private static Coordinate[] merged(Coordinate[] a, Coordinate[] b) {
    Coordinate[] all = new Coordinate[a.length + b.length];
    int j = 0;
    int k = 0;
    for (int i = 0; i < all.length; i++) {
      all[i] = k == b.length || (j < a.length && a[j].compareTo(b[k]) <= 0) ? a[j++] : b[k++];
    }
    return all;
  }

  /** The hull of points as its upper and its lower edge, both from left to right. */
  private static final class Link {
    private final Coordinate[] top;
    private final Coordinate[] bottom;
    private int atTop;
    private int atBottom;

    /** Andrew's monotone chain: points must come from left to right. */
    Link(Coordinate[] points) {
      this.top = edge(points, -1);
      this.bottom = edge(points, 1);
    }

    private static Coordinate[] edge(Coordinate[] points, int sign) {
      Coordinate[] edge = new Coordinate[points.length];
      int n = 0;
      for (Coordinate p : points) {
        while (n > 1 && sign * turn(edge[n - 2], edge[n - 1], p) <= 0) {
          n--;
        }
        edge[n++] = p;
      }
      return Arrays.copyOf(edge, n);
    }

    private static double turn(Coordinate a, Coordinate b, Coordinate c) {
      return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    }

    double left() {
      return top[0].x;
    }

    double right() {
      return top[top.length - 1].x;
    }

    /**
     * The heights of both edges at the ends of a stretch: bottom left and right, top left and
     * right. Stretches must come from left to right; corners within {@code slack} of the left end
     * count as on it.
     */
    double[] span(double x0, double x1, double slack) {
      double[] span = new double[4];
      atBottom = after(bottom, atBottom, x0 + slack);
      span[0] = height(bottom, atBottom, x0);
      atBottom = upTo(bottom, atBottom, x1);
      span[1] = height(bottom, atBottom, x1);
      atTop = after(top, atTop, x0 + slack);
      span[2] = height(top, atTop, x0);
      atTop = upTo(top, atTop, x1);
      span[3] = height(top, atTop, x1);
      return span;
    }

    private static int after(Coordinate[] edge, int at, double x) {
      int on = at;
      while (on + 2 < edge.length && edge[on + 1].x <= x) {
        on++;
      }
      return on;
    }

    private static int upTo(Coordinate[] edge, int at, double x) {
      int on = at;
      while (on + 2 < edge.length && edge[on + 1].x < x) {
        on++;
      }
      return on;
    }

    private static double height(Coordinate[] edge, int at, double x) {
      Coordinate a = edge[at];
      Coordinate b = edge[at + 1];
      if (x <= a.x || b.x - a.x < SAME) {
        return a.y;
      }
      return x >= b.x ? b.y : a.y + (x - a.x) / (b.x - a.x) * (b.y - a.y);
    }
  }

  /** False where some stretch of the axis meets the shapes in two pieces, or in none. */
  private boolean swept() {
    double[] places = places();
    for (int i = 0; i + 1 < places.length; i++) {
      if (places[i + 1] - places[i] > SAME && !stretch(places[i], places[i + 1])) {
        return false;
      }
    }
    return places.length > 1;
  }

  /** The places where the edges have corners that are not too near to each other. */
  private double[] places() {
    if (links.stream().anyMatch(link -> link.top.length < 2 || link.bottom.length < 2)) {
      return new double[0];
    }
    double left = links.stream().mapToDouble(Link::left).min().orElse(0);
    double right = links.stream().mapToDouble(Link::right).max().orElse(0);
    double step = (right - left) / PLACES;
    double[] places =
        links.stream()
            .flatMap(link -> Stream.of(link.top, link.bottom))
            .flatMapToDouble(edge -> corners(edge, step))
            .sorted()
            .toArray();
    int n = 0;
    for (double place : places) {
      if (n == 0 || place - places[n - 1] > step / 30) {
        places[n++] = place;
      }
    }
    slack = step / 30;
    double[] all = Arrays.copyOf(places, places[n - 1] < right ? n + 1 : n);
    all[all.length - 1] = right;
    return all;
  }

  /** The ends of an edge, its farthest corners, and those that lie a step apart. */
  private static DoubleStream corners(Coordinate[] edge, double step) {
    DoubleStream.Builder places = DoubleStream.builder();
    Coordinate before = edge[0];
    Coordinate highest = before;
    Coordinate lowest = before;
    places.add(before.x);
    for (Coordinate c : edge) {
      highest = c.y > highest.y ? c : highest;
      lowest = c.y < lowest.y ? c : lowest;
      if (Math.max(c.x - before.x, Math.abs(c.y - before.y)) >= step) {
        places.add(c.x);
        before = c;
      }
    }
    return places.add(highest.x).add(lowest.x).add(edge[edge.length - 1].x).build();
  }

  private boolean stretch(double x0, double x1) {
    List<double[]> spans = new ArrayList<>();
    double between = (x0 + x1) / 2;
    for (Link link : links) {
      if (link.left() <= between && link.right() >= between) {
        spans.add(link.span(x0, x1, slack));
      }
    }
    if (!inOnePiece(spans)) {
      return false;
    }
    edge(upper, spans, x0, x1, 2, 1);
    edge(lower, spans, x0, x1, 0, -1);
    return true;
  }

  private static boolean inOnePiece(List<double[]> spans) {
    spans.sort((a, b) -> Double.compare(a[0] + a[1], b[0] + b[1]));
    double reach = spans.isEmpty() ? 0 : spans.get(0)[2] + spans.get(0)[3];
    for (double[] span : spans) {
      if (span[0] + span[1] > reach + SAME) {
        return false;
      }
      reach = Math.max(reach, span[2] + span[3]);
    }
    return !spans.isEmpty();
  }

  /**
   * The highest of the edges, or with sign -1 the lowest, and where one takes over from another.
   */
  private static void edge(
      List<Coordinate> line, List<double[]> spans, double x0, double x1, int at, int sign) {
    double[] first = farthest(spans, at, sign);
    double[] last = farthest(spans, at + 1, sign);
    add(line, x0, first[at]);
    double gain = sign * (last[at + 1] - first[at + 1]);
    double lead = sign * (first[at] - last[at]);
    if (gain > SAME && lead > SAME) {
      double t = lead / (lead + gain);
      add(line, x0 + t * (x1 - x0), first[at] + t * (first[at + 1] - first[at]));
    }
    add(line, x1, last[at + 1]);
  }

  private static void add(List<Coordinate> line, double x, double y) {
    Coordinate before = line.isEmpty() ? null : line.get(line.size() - 1);
    if (before == null || Math.abs(before.x - x) > SAME || Math.abs(before.y - y) > SAME) {
      line.add(new Coordinate(x, y));
    }
  }

  private static double[] farthest(List<double[]> spans, int at, int sign) {
    double[] best = spans.get(0);
    for (double[] span : spans) {
      best = sign * span[at] > sign * best[at] ? span : best;
    }
    return best;
  }

  private Geometry area(double cos, double sin) {
    Coordinate[] top = thinned(upper);
    Coordinate[] bottom = thinned(lower);
    List<Coordinate> ring = new ArrayList<>(List.of(top));
    for (int i = bottom.length - 1; i >= 0; i--) {
      ring.add(bottom[i]);
    }
    CoordinateList back = new CoordinateList();
    for (Coordinate c : ring) {
      back.add(new Coordinate(cos * c.x - sin * c.y, sin * c.x + cos * c.y), false);
    }
    back.closeRing();
    return Hulls.PAPER.createPolygon(back.toCoordinateArray());
  }

  private static Coordinate[] thinned(List<Coordinate> line) {
    Geometry whole = Hulls.line(line.toArray(new Coordinate[0]));
    return DouglasPeuckerSimplifier.simplify(whole, TOLERANCE).getCoordinates();
  }
}
