package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Short hair: the part of a shell round the skull that lies above the hairline and faces the
 * viewer. Right in every view because it is cut on the shell, not on paper.
 */
final class Hair {
  private static final int AROUND = 32;
  private static final int DOWN = 20;
  private static final double HORIZON = -.06;

  /** How far hair stands off the skull, rising from nothing at the hairline. */
  private static final double VOLUME = .095;

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

  /** The facets are laid out alike on both sides, so that mirrored heads have mirrored hair. */
  Geometry area() {
    List<Geometry> facets = new ArrayList<>();
    for (int i = 0; i < DOWN; i++) {
      for (int j = 0; j < AROUND; j++) {
        addPatch(facets, i, j < AROUND / 2 ? j : j + 1, j < AROUND / 2 ? j + 1 : j);
      }
    }
    Geometry seen = Hulls.union(facets);
    return Hulls.opened(Hulls.closed(seen, paper.mm(.012)), paper.mm(.008));
  }

  private static Vec unit(int i, int j) {
    double down = Math.PI * i / DOWN;
    double around = 2 * Math.PI * j / AROUND;
    return new Vec(
        Math.sin(down) * Math.cos(around), Math.cos(down), Math.sin(down) * Math.sin(around));
  }

  /** A patch of the shell, whole or, on the hairline and the horizon, as two cut triangles. */
  private void addPatch(List<Geometry> facets, int i, int from, int to) {
    List<Vec> patch = List.of(unit(i, from), unit(i + 1, from), unit(i + 1, to), unit(i, to));
    if (patch.stream().allMatch(p -> seen(p) > 0)) {
      add(facets, patch);
    } else if (patch.stream().anyMatch(p -> seen(p) > -.2)) {
      add(facets, cut(List.of(patch.get(0), patch.get(1), patch.get(2))));
      add(facets, cut(List.of(patch.get(0), patch.get(2), patch.get(3))));
    }
  }

  private double seen(Vec unit) {
    return Math.min(outwards(unit), aboveHairline(unit));
  }

  private List<Vec> cut(List<Vec> facet) {
    return clipped(clipped(facet, this::outwards), Hair::aboveHairline);
  }

  private void add(List<Geometry> facets, List<Vec> facet) {
    if (facet.size() > 2) {
      Geometry area = Hulls.hull(facet.stream().map(this::onPaper).toList());
      if (area.getArea() > 1e-9) {
        facets.add(area);
      }
    }
  }

  private Coordinate onPaper(Vec unit) {
    Vec full = unit.times(1 + VOLUME * Math.min(1, Math.max(0, aboveHairline(unit)) / .35));
    return paper.at(head.point(radii.x() * full.x(), radii.y() * full.y(), radii.z() * full.z()));
  }

  private double outwards(Vec unit) {
    Vec normal = new Vec(unit.x() / radii.x(), unit.y() / radii.y(), unit.z() / radii.z());
    return paper.facing(head.axes().apply(normal.unit())) - HORIZON;
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
        kept.add(a.towards(b, fa / (fa - fb)));
      }
    }
    return kept;
  }
}
