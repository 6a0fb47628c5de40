package goniograph.figure;

import java.util.Set;
import org.locationtech.jts.geom.Geometry;

/**
 * How a part is bounded.
 *
 * @param edge the lines of its outline, welds left out
 * @param halo the lines along which white is left free round it, clear of welded neighbours
 * @param neighbours the parts it is welded to; the halo on all others follows the edge
 */
record Outline(Geometry edge, Geometry halo, Set<Part.Id> neighbours) {
  Outline {
    neighbours = Set.copyOf(neighbours);
  }
}
