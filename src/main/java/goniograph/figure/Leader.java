package goniograph.figure;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.DistanceOp;

/** A thin line from a word to what it names, where the word stands away from it. */
final class Leader {
  /** A word this near, in mm, needs no line. */
  private static final double NEAR = 3.2;

  private Leader() {}

  static Optional<Geometry> between(Geometry box, Coordinate at) {
    Geometry target = Hulls.PAPER.createPoint(at);
    Coordinate[] nearest = DistanceOp.nearestPoints(box, target);
    if (nearest[0].distance(at) < NEAR) {
      return Optional.empty();
    }
    return Optional.of(Hulls.line(nearest[0], at));
  }
}
