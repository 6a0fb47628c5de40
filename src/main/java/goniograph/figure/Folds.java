package goniograph.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The lines within a part that is made of pieces: where the edge of a nearer piece lies over a
 * farther one. Two pieces of one finger flow into each other at their joint.
 */
final class Folds {
  /** Edges that run along the outline within this, mm, belong to it. */
  private static final double ALONG = .1;

  private final List<Piece> pieces;

  /**
   * A piece.
   *
   * @param area on paper
   * @param depth how near it is
   * @param joint where it flows into the piece before it in its own chain
   * @param radius within which it does, mm
   * @param before the number of that piece; itself where there is none
   */
  record Piece(Geometry area, double depth, Coordinate joint, double radius, int before) {}

  Folds(List<Piece> pieces) {
    this.pieces = List.copyOf(pieces);
  }

  /** The lines within {@code outline}. */
  Geometry within(Geometry outline) {
    List<Integer> nearest = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      nearest.add(i);
    }
    nearest.sort(Comparator.comparingDouble((Integer i) -> pieces.get(i).depth()).reversed());
    List<Geometry> lines = new ArrayList<>();
    Geometry covered = Hulls.PAPER.createPolygon();
    for (int i : nearest) {
      lines.add(Hulls.minus(flowing(i), covered));
      covered = Hulls.union(covered, pieces.get(i).area());
    }
    Geometry all = Hulls.PAPER.buildGeometry(lines);
    return Hulls.both(all, Hulls.widened(outline, -ALONG));
  }

  /** The edge of a piece without what lies inside its neighbours near their common joint. */
  private Geometry flowing(int i) {
    Geometry edge = pieces.get(i).area().getBoundary();
    for (int j = 0; j < pieces.size(); j++) {
      if (j != i && (pieces.get(j).before() == i || pieces.get(i).before() == j)) {
        Piece child = pieces.get(j).before() == i ? pieces.get(j) : pieces.get(i);
        Geometry disc = Hulls.circle(child.joint(), child.radius());
        edge = Hulls.minus(edge, Hulls.both(pieces.get(j).area(), disc));
      }
    }
    return edge;
  }
}
