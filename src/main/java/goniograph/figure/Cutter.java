package goniograph.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * An area that cuts lines. The general overlay of plane geometry builds a graph of everything it is
 * given; a drawing only asks which stretches of some lines lie in an area, and this answers that
 * alone, many times faster.
 */
final class Cutter {
  /** Edges that are looked at together. */
  private static final int RUN = 12;

  /** Shorter stretches than this, in mm, are dropped. */
  private static final double NOTHING = 1e-7;

  private final List<Run> runs = new ArrayList<>();
  private final Envelope bounds = new Envelope();

  private record Run(Coordinate[] ring, int from, int to, Envelope box) {}

  Cutter(Geometry area) {
    for (int i = 0; i < area.getNumGeometries(); i++) {
      if (area.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        ring(polygon.getExteriorRing());
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          ring(polygon.getInteriorRingN(hole));
        }
      }
    }
    runs.forEach(run -> bounds.expandToInclude(run.box));
  }

  private void ring(LineString line) {
    Coordinate[] ring = line.getCoordinates();
    for (int from = 0; from + 1 < ring.length; from += RUN) {
      int to = Math.min(from + RUN, ring.length - 1);
      Envelope box = new Envelope();
      for (int i = from; i <= to; i++) {
        box.expandToInclude(ring[i]);
      }
      runs.add(new Run(ring, from, to, box));
    }
  }

  /** The stretches of lines inside the area. */
  Geometry inside(Geometry lines) {
    return lines(lines, List.of(this), true);
  }

  /** The stretches of lines outside the area. */
  Geometry outside(Geometry lines) {
    return lines(lines, List.of(this), false);
  }

  /** The stretches of lines that do not lie in all of some areas at once. */
  static Geometry outsideAll(Geometry lines, List<Cutter> areas) {
    return lines(lines, areas, false);
  }

  private static Geometry lines(Geometry lines, List<Cutter> areas, boolean inside) {
    if (areas.stream().anyMatch(a -> !a.bounds.intersects(lines.getEnvelopeInternal()))) {
      return inside ? Hulls.PAPER.createLineString() : lines;
    }
    List<LineString> kept = new ArrayList<>();
    for (int i = 0; i < lines.getNumGeometries(); i++) {
      if (lines.getGeometryN(i) instanceof LineString line) {
        cut(line.getCoordinates(), areas, inside, kept);
      }
    }
    return Hulls.PAPER.createMultiLineString(kept.toArray(new LineString[0]));
  }

  /** Walks along a line from crossing to crossing and keeps the stretches that are wanted. */
  private static void cut(
      Coordinate[] line, List<Cutter> areas, boolean inside, List<LineString> kept) {
    List<Coordinate> stretch = new ArrayList<>();
    for (int i = 0; i + 1 < line.length; i++) {
      stretch.add(line[i]);
      for (double t : crossings(line[i], line[i + 1], areas)) {
        Coordinate at = between(line[i], line[i + 1], t);
        stretch.add(at);
        keep(stretch, areas, inside, kept);
        stretch.clear();
        stretch.add(at);
      }
    }
    if (line.length > 0) {
      stretch.add(line[line.length - 1]);
      keep(stretch, areas, inside, kept);
    }
  }

  private static void keep(
      List<Coordinate> stretch, List<Cutter> areas, boolean inside, List<LineString> kept) {
    LineString line = Hulls.line(stretch.toArray(new Coordinate[0]));
    if (line.getLength() > NOTHING) {
      Coordinate middle = middle(stretch, line.getLength());
      if (areas.stream().allMatch(area -> area.holds(middle)) == inside) {
        kept.add(line);
      }
    }
  }

  /** A point halfway along, clear of the crossings at the ends. */
  private static Coordinate middle(List<Coordinate> stretch, double length) {
    double left = length / 2;
    for (int i = 0; i + 1 < stretch.size(); i++) {
      double step = stretch.get(i).distance(stretch.get(i + 1));
      if (step >= left && step > 0) {
        return between(stretch.get(i), stretch.get(i + 1), left / step);
      }
      left -= step;
    }
    return stretch.get(stretch.size() - 1);
  }

  private static double[] crossings(Coordinate a, Coordinate b, List<Cutter> areas) {
    double[] places = new double[4];
    int count = 0;
    Envelope box = new Envelope(a, b);
    for (Cutter area : areas) {
      for (Run run : area.runs) {
        if (run.box.intersects(box)) {
          for (int i = run.from; i < run.to; i++) {
            double t = crossing(a, b, run.ring[i], run.ring[i + 1]);
            if (t >= 0 && t < 1) {
              places = count == places.length ? Arrays.copyOf(places, 2 * count) : places;
              places[count++] = t;
            }
          }
        }
      }
    }
    Arrays.sort(places, 0, count);
    return Arrays.copyOf(places, count);
  }

  /** Where on the way from {@code a} to {@code b} an edge is crossed; -1 where it is not. */
  private static double crossing(Coordinate a, Coordinate b, Coordinate c, Coordinate d) {
    double abx = b.x - a.x;
    double aby = b.y - a.y;
    double cdx = d.x - c.x;
    double cdy = d.y - c.y;
    double across = abx * cdy - aby * cdx;
    if (across == 0) {
      return -1;
    }
    double t = ((c.x - a.x) * cdy - (c.y - a.y) * cdx) / across;
    double u = ((c.x - a.x) * aby - (c.y - a.y) * abx) / across;
    return u >= 0 && u <= 1 ? t : -1;
  }

  private static Coordinate between(Coordinate a, Coordinate b, double t) {
    return new Coordinate(a.x + t * (b.x - a.x), a.y + t * (b.y - a.y));
  }

  /** True for a point of the area, by the number of edges on its right. */
  boolean holds(Coordinate p) {
    if (!bounds.contains(p)) {
      return false;
    }
    boolean in = false;
    for (Run run : runs) {
      if (run.box.getMinY() <= p.y && p.y <= run.box.getMaxY() && run.box.getMaxX() >= p.x) {
        for (int i = run.from; i < run.to; i++) {
          Coordinate a = run.ring[i];
          Coordinate b = run.ring[i + 1];
          if (a.y > p.y != b.y > p.y && p.x < a.x + (p.y - a.y) * (b.x - a.x) / (b.y - a.y)) {
            in = !in;
          }
        }
      }
    }
    return in;
  }
}
