package goniograph.figure;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Paints ordered parts: first the areas, far to near, each with its halo; then every line that is
 * seen. Lines are cut where a nearer part or its halo hides them, so nothing has to be painted
 * over.
 */
final class Painter {
  /** Seen pieces of line shorter than this, in mm, are left out. */
  private static final double CRUMB = .8;

  /** Seen specks of black narrower than twice this, mm, are left out. */
  private static final double SPECK = .1;

  private final Style style;
  private final Weights weights;
  private final List<Part> parts;
  private final List<Outline> outlines = new ArrayList<>();
  private final List<Cutter> areas = new ArrayList<>();
  private final Map<Geometry, Geometry> bands = new IdentityHashMap<>();
  private final Map<Geometry, Cutter> cutters = new IdentityHashMap<>();

  /**
   * @param parts farthest first
   */
  Painter(Style style, Weights weights, List<Part> parts) {
    this.style = style;
    this.weights = weights;
    this.parts = List.copyOf(parts);
    Welds welds = new Welds(parts, weights);
    for (Part part : parts) {
      outlines.add(welds.outline(part));
      areas.add(new Cutter(part.outline()));
    }
  }

  List<Paint> painted() {
    List<Paint> painted = new ArrayList<>();
    List<Paint.Line> lines = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      areas(i, painted);
      lines(i, lines);
    }
    painted.addAll(together(lines));
    painted.removeIf(paint -> paint.shape().isEmpty());
    return painted;
  }

  /** Lines of one pen as one: no line crosses another, so their order does not matter. */
  private static List<Paint> together(List<Paint.Line> lines) {
    Map<Paint.Line, List<Geometry>> pens = new LinkedHashMap<>();
    for (Paint.Line line : lines) {
      Paint.Line pen = line.along(Hulls.PAPER.createLineString());
      pens.computeIfAbsent(pen, p -> new ArrayList<>()).add(line.shape());
    }
    List<Paint> all = new ArrayList<>();
    pens.forEach((pen, shapes) -> all.add(pen.along(Lines.all(shapes))));
    return all;
  }

  /** What is seen of a line that lies behind everything. */
  Geometry behind(Geometry line, double least) {
    Geometry seen = line;
    for (int j = 0; j < parts.size(); j++) {
      seen = cutter(band(j, outlines.get(j).edge())).outside(areas.get(j).outside(seen));
    }
    return Lines.pieces(seen, least);
  }

  /** The parts nearer than part {@code i} that may hide something of a shape. */
  private List<Integer> nearer(int i, Geometry shape) {
    List<Integer> nearer = new ArrayList<>();
    for (int j = i + 1; j < parts.size(); j++) {
      Envelope reach = new Envelope(parts.get(j).outline().getEnvelopeInternal());
      reach.expandBy(2);
      if (reach.intersects(shape.getEnvelopeInternal())) {
        nearer.add(j);
      }
    }
    return nearer;
  }

  /** The strip round part {@code j} on which part {@code i} is not drawn. */
  private Geometry band(int j, int i) {
    Part part = parts.get(j);
    Outline outline = outlines.get(j);
    boolean flows =
        outline.neighbours().contains(parts.get(i).id()) || part.sameSupport(parts.get(i));
    return band(j, flows ? outline.halo() : outline.edge());
  }

  private Geometry band(int j, Geometry line) {
    double width = weights.outline(parts.get(j).role()) / 2 + weights.halo();
    return bands.computeIfAbsent(line, lines -> Hulls.band(lines, width));
  }

  private Cutter cutter(Geometry area) {
    return cutters.computeIfAbsent(area, Cutter::new);
  }

  /** The pieces of a part's lines that are seen. */
  private Geometry seen(int i, Geometry lines, double least) {
    Geometry seen = lines;
    for (int j : nearer(i, lines)) {
      seen = cutter(band(j, i)).outside(areas.get(j).outside(seen));
    }
    return Lines.pieces(seen, least);
  }

  /** What is seen of an area of a part. */
  private Geometry seen(int i, Geometry area) {
    List<Geometry> hidden = new ArrayList<>();
    for (int j : nearer(i, area)) {
      hidden.add(parts.get(j).outline());
      hidden.add(band(j, i));
    }
    Geometry seen = hidden.isEmpty() ? area : Hulls.minus(area, Hulls.union(hidden));
    return Hulls.opened(seen, SPECK);
  }

  private void areas(int i, List<Paint> paints) {
    Part part = parts.get(i);
    if (style == Style.COLOUR) {
      double width = weights.outline(part.role()) + 2 * weights.halo();
      paints.add(Paint.Line.cut(outlines.get(i).halo(), Style.PAPER, width));
    }
    for (Part.Region region : part.regions()) {
      String colour = style.fill(region.tone(), part.role());
      if (style == Style.COLOUR) {
        paints.add(new Paint.Area(region.area(), colour, region.tone() != Tone.HAIR));
      } else if (!colour.equals(Style.PAPER)) {
        paints.add(new Paint.Area(seen(i, region.area()), colour));
      }
    }
  }

  private void lines(int i, List<Paint.Line> paints) {
    Part part = parts.get(i);
    String colour = style.line(part.role());
    if (part.role() == Role.MOVING && style.hatched() && part.id().kind() != Kind.HEAD) {
      Geometry hatch = seen(i, Hatch.of(part.outline(), weights.pitch()), 2 * weights.halo());
      paints.add(Paint.Line.cut(hatch, colour, weights.hatch()));
    }
    for (Geometry inner : part.inner()) {
      double least = innerCrumb(part.role());
      paints.add(Paint.Line.solid(seen(i, inner, least), colour, weights.inner()));
    }
    Geometry edge = seen(i, outlines.get(i).edge(), crumb(part.role()));
    paints.add(Paint.Line.solid(edge, colour, weights.outline(part.role())));
  }

  /** What lies behind leaves longer crumbs between what lies before it. */
  private static double crumb(Role role) {
    return switch (role) {
      case NEAR, MOVING, PROP -> CRUMB;
      case FAR, SUPPORT -> 3 * CRUMB;
    };
  }

  private static double innerCrumb(Role role) {
    return role == Role.SUPPORT ? 3 * CRUMB : .5;
  }
}
