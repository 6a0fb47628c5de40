package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.Geometry;

/**
 * Short hair: the part of a shell round the skull that lies above the hairline and faces the
 * viewer. Right in every view because it is cut on the shell, not on paper.
 */
final class Hair {
  private static final int AROUND = 30;
  private static final int DOWN = 18;

  /** How far hair stands off the skull. */
  private static final double VOLUME = .07;

  private final Projection paper;
  private final Frame head;
  private final Vec radii;

  /**
   * @param head a frame with its origin in the middle of the skull
   * @param radii the skull's half axes, in body heights
   */
  Hair(Projection paper, Frame head, Vec radii) {
    this.paper = paper;
    this.head = head;
    this.radii = radii;
  }

  /** Whole patches beside each other in a row make one strip; those on an edge are cut. */
  Geometry area() {
    List<Geometry> facets = new ArrayList<>();
    for (int row = 0; row < DOWN; row++) {
      int from = 0;
      for (int j = 0; j <= AROUND; j++) {
        if (j == AROUND || !whole(row, j)) {
          addStrip(facets, row, from, j);
          from = j + 1;
        }
        if (j < AROUND && !whole(row, j)) {
          addCut(facets, row, j);
        }
      }
    }
    return Hulls.opened(Hulls.closed(Hulls.union(facets), paper.mm(.012)), paper.mm(.008));
  }

  private boolean whole(int row, int j) {
    return seen(unit(row, j)) > 0
        && seen(unit(row, j + 1)) > 0
        && seen(unit(row + 1, j)) > 0
        && seen(unit(row + 1, j + 1)) > 0;
  }

  private void addStrip(List<Geometry> facets, int row, int from, int to) {
    List<Vec> rim = new ArrayList<>();
    for (int j = from; j <= to; j++) {
      rim.add(unit(row, j));
    }
    for (int j = to; j >= from; j--) {
      rim.add(unit(row + 1, j));
    }
    if (to > from && !add(facets, rim)) {
      int middle = (from + to) / 2;
      addStrip(facets, row, from, to - from > 1 ? middle : from);
      addStrip(facets, row, to - from > 1 ? middle : to, to);
    }
  }

  private static Vec unit(int i, int j) {
    double down = Math.PI * i / DOWN;
    double around = 2 * Math.PI * (j % AROUND) / AROUND;
    return new Vec(
        Math.sin(down) * Math.cos(around), Math.cos(down), Math.sin(down) * Math.sin(around));
  }

  /** A patch on the hairline or the horizon, as two cut triangles alike on both sides. */
  private void addCut(List<Geometry> facets, int row, int j) {
    int from = j < AROUND / 2 ? j : j + 1;
    int to = j < AROUND / 2 ? j + 1 : j;
    Vec near = unit(row, from);
    Vec far = unit(row + 1, to);
    add(facets, cut(List.of(near, unit(row + 1, from), far)));
    add(facets, cut(List.of(near, far, unit(row, to))));
  }

  private double seen(Vec unit) {
    return Math.min(outwards(unit), aboveHairline(unit));
  }

  private List<Vec> cut(List<Vec> facet) {
    return clipped(clipped(facet, this::outwards), Hair::aboveHairline);
  }

  /** False where the facet crosses itself on paper and is left out. */
  private boolean add(List<Geometry> facets, List<Vec> facet) {
    CoordinateList rim = new CoordinateList();
    facet.forEach(point -> rim.add(onPaper(point), false));
    rim.closeRing();
    if (rim.size() <= 3) {
      return true;
    }
    Geometry area = Hulls.PAPER.createPolygon(rim.toCoordinateArray());
    boolean sound = area.isValid();
    if (sound && area.getArea() > 1e-9) {
      facets.add(area);
    }
    return sound;
  }

  private Coordinate onPaper(Vec unit) {
    Vec full = unit.times(1 + VOLUME);
    return paper.at(head.point(radii.x() * full.x(), radii.y() * full.y(), radii.z() * full.z()));
  }

  private double outwards(Vec unit) {
    Vec normal = new Vec(unit.x() / radii.x(), unit.y() / radii.y(), unit.z() / radii.z());
    return paper.facing(head.axes().apply(normal.unit()));
  }

  /** Positive on the hair: above the brow or on the back of the head, with the ears left free. */
  private static double aboveHairline(Vec p) {
    double top = p.y() - .60 * p.x() - .08;
    double back = Math.min(-.33 - p.x(), p.y() + .64);
    double clearOfEar = Math.max(.8 - Math.abs(p.z()), Math.max(p.y() - .35, -.25 - p.x()));
    return Math.min(Math.max(top, back), clearOfEar);
  }

  private interface Field {
    double at(Vec point);
  }

  /** The part of a facet where the field is positive. */
  private static List<Vec> clipped(List<Vec> facet, Field field) {
    List<Vec> kept = new ArrayList<>();
    for (int i = 0; i < facet.size(); i++) {
      Vec a = facet.get(i);
      Vec b = facet.get((i + 1) % facet.size());
      double fa = field.at(a);
      double fb = field.at(b);
      if (fa >= 0) {
        kept.add(a);
      }
      if (fa * fb < 0) {
        kept.add(fa > 0 ? a.towards(b, fa / (fa - fb)) : b.towards(a, fb / (fb - fa)));
      }
    }
    return kept;
  }
}
