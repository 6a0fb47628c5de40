package goniograph.figure;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** What of the paper is already taken. */
final class Covered {
  private final List<Cutter> areas = new ArrayList<>();

  void add(Geometry area) {
    areas.add(new Cutter(area));
  }

  /** True for a point that something covers. */
  boolean at(double x, double y) {
    Coordinate point = new Coordinate(x, y);
    return areas.stream().anyMatch(area -> area.holds(point));
  }
}
