package goniograph.figure;

import java.util.ArrayList;
import java.util.List;
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

  /**
   * @param parts farthest first
   */
  Painter(Style style, Weights weights, List<Part> parts) {
    this.style = style;
    this.weights = weights;
    this.parts = List.copyOf(parts);
    Welds welds = new Welds(parts, weights);
    parts.forEach(part -> outlines.add(welds.outline(part)));
  }

  List<Paint> painted() {
    List<Paint> areas = new ArrayList<>();
    List<Paint> lines = new ArrayList<>();
    List<Geometry> hidden = hidden();
    for (int i = 0; i < parts.size(); i++) {
      areas(i, hidden.get(i), areas);
      lines(i, hidden.get(i), lines);
    }
    areas.addAll(lines);
    areas.removeIf(paint -> paint.shape().isEmpty());
    return areas;
  }

  /** For each part, what nearer ones hide of it. */
  private List<Geometry> hidden() {
    List<Geometry> hidden = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      List<Geometry> nearer = new ArrayList<>();
      for (int j = i + 1; j < parts.size(); j++) {
        if (reaches(j).intersects(parts.get(i).outline().getEnvelopeInternal())) {
          nearer.add(parts.get(j).outline());
          nearer.add(band(j, parts.get(i)));
        }
      }
      hidden.add(Hulls.union(nearer));
    }
    return hidden;
  }

  private Envelope reaches(int i) {
    Envelope box = new Envelope(parts.get(i).outline().getEnvelopeInternal());
    box.expandBy(2);
    return box;
  }

  /** The strip round a part on which {@code other} is not drawn. */
  private Geometry band(int i, Part other) {
    Part part = parts.get(i);
    Outline outline = outlines.get(i);
    boolean flows = outline.neighbours().contains(other.id()) || part.sameSupport(other);
    Geometry line = flows ? outline.halo() : outline.edge();
    return Hulls.band(line, weights.outline(part.role()) / 2 + weights.halo());
  }

  private void areas(int i, Geometry hidden, List<Paint> paints) {
    Part part = parts.get(i);
    if (style == Style.COLOUR) {
      double width = weights.outline(part.role()) + 2 * weights.halo();
      paints.add(Paint.Line.cut(outlines.get(i).halo(), Style.PAPER, width));
    }
    for (Part.Region region : part.regions()) {
      String colour = style.fill(region.tone(), part.role());
      if (style == Style.COLOUR) {
        paints.add(new Paint.Area(region.area(), colour));
      } else if (!colour.equals(Style.PAPER)) {
        paints.add(new Paint.Area(Hulls.opened(Hulls.minus(region.area(), hidden), SPECK), colour));
      }
    }
  }

  private void lines(int i, Geometry hidden, List<Paint> paints) {
    Part part = parts.get(i);
    String colour = style.line(part.role());
    if (part.role() == Role.MOVING && style.hatched() && part.id().kind() != Kind.HEAD) {
      Geometry inside = Hulls.widened(part.outline(), -.1);
      Geometry hatch = Hatch.of(Hulls.minus(inside, hidden), weights.pitch());
      paints.add(Paint.Line.cut(Lines.pieces(hatch, 2 * weights.halo()), colour, weights.hatch()));
    }
    for (Geometry inner : part.inner()) {
      paints.add(
          Paint.Line.solid(seen(inner, hidden, innerCrumb(part.role())), colour, weights.inner()));
    }
    Geometry edge = seen(outlines.get(i).edge(), hidden, crumb(part.role()));
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

  private static Geometry seen(Geometry lines, Geometry hidden, double least) {
    return Lines.pieces(Hulls.minus(lines, hidden), least);
  }
}
