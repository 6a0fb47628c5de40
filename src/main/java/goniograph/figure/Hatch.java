package goniograph.figure;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/** Slanting lines clipped to an area: real lines, so every printer draws them. */
final class Hatch {
  private Hatch() {}

  /** Lines rising at 45 degrees, {@code pitch} mm apart, on one raster for the whole drawing. */
  static Geometry of(Geometry area, double pitch) {
    if (area.isEmpty()) {
      return area;
    }
    Envelope box = area.getEnvelopeInternal();
    double step = pitch * Math.sqrt(2);
    double first = Math.ceil((box.getMinX() + box.getMinY()) / step) * step;
    List<LineString> lines = new ArrayList<>();
    for (double sum = first; sum < box.getMaxX() + box.getMaxY(); sum += step) {
      lines.add(
          Hulls.line(
              new Coordinate(sum - box.getMaxY(), box.getMaxY()),
              new Coordinate(sum - box.getMinY(), box.getMinY())));
    }
    Geometry all = Hulls.PAPER.createMultiLineString(lines.toArray(new LineString[0]));
    return new Cutter(area).inside(all);
  }
}
