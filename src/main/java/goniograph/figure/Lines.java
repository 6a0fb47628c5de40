package goniograph.figure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;

/** Line work: loose pieces put together, crumbs left out. */
final class Lines {
  private Lines() {}

  /** All lines of some geometries. */
  static Geometry all(Collection<Geometry> shapes) {
    List<LineString> all = new ArrayList<>();
    for (Geometry shape : shapes) {
      for (int i = 0; i < shape.getNumGeometries(); i++) {
        if (shape.getGeometryN(i) instanceof LineString line && !line.isEmpty()) {
          all.add(line);
        }
      }
    }
    return Hulls.PAPER.createMultiLineString(all.toArray(new LineString[0]));
  }

  /** The lines of a geometry joined end to end, without those shorter than {@code least} mm. */
  static Geometry pieces(Geometry lines, double least) {
    LineMerger merger = new LineMerger();
    merger.add(lines);
    Collection<?> merged = merger.getMergedLineStrings();
    List<LineString> kept = new ArrayList<>();
    for (Object one : merged) {
      if (one instanceof LineString line && line.getLength() >= least) {
        kept.add(line);
      }
    }
    kept.sort(LineString::compareTo);
    return Hulls.PAPER.createMultiLineString(kept.toArray(new LineString[0]));
  }
}
