package goniograph.figure;

import goniograph.pose.Scene;
import goniograph.pose.Support;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Body, supports and what is held at one moment, on paper.
 *
 * @param parts farthest first
 */
record Stage(List<Part> parts) {
  Stage {
    parts = List.copyOf(parts);
  }

  /** How exactly parts are drawn, mm. */
  private static final double FINE = .01;

  static Stage of(Scene scene, SceneParts parts, Projection paper, Step step) {
    DepthOrder order = new DepthOrder(paper, step.key().skeleton(), carries(scene));
    List<Part> simple =
        parts.of(step.key(), step.marked()).stream()
            .filter(part -> Crop.shows(scene.focus(), part))
            .map(p -> p.simplified(FINE))
            .toList();
    return new Stage(order.sorted(simple));
  }

  private static boolean[] carries(Scene scene) {
    List<Boolean> all = new ArrayList<>();
    for (Support support : scene.supports()) {
      support.boxes().forEach(box -> all.add(support.carries()));
    }
    boolean[] carries = new boolean[all.size()];
    for (int i = 0; i < carries.length; i++) {
      carries[i] = all.get(i);
    }
    return carries;
  }

  /** The same at another scale. */
  Stage scaled(double k) {
    return k == 1 ? this : new Stage(parts.stream().map(part -> part.scaled(k)).toList());
  }

  /** The body and what it holds. */
  static boolean ofPerson(Part part) {
    return part.id().kind() != Kind.SUPPORT;
  }

  /** What some parts fill. */
  Envelope bounds(Predicate<Part> which) {
    Envelope bounds = new Envelope();
    parts.stream()
        .filter(which)
        .forEach(part -> bounds.expandToInclude(part.outline().getEnvelopeInternal()));
    return bounds;
  }

  /** The area of some parts together. */
  Geometry area(Predicate<Part> which) {
    return Hulls.union(parts.stream().filter(which).map(Part::outline).toList());
  }

  /** Some parts, as areas that can be asked about points. */
  Covered covered(Predicate<Part> which) {
    Covered covered = new Covered();
    parts.stream().filter(which).forEach(part -> covered.add(part.outline()));
    return covered;
  }

  /** The middle of the person. */
  Coordinate middle() {
    return bounds(Stage::ofPerson).centre();
  }
}
