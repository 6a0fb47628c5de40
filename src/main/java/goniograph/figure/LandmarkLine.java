package goniograph.figure;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** A dashed line between two points that line up, with a ring at each. */
final class LandmarkLine {
  private static final List<Double> DASH = List.of(1.2, .8);

  private LandmarkLine() {}

  static List<Paint> painted(Coordinate from, Coordinate to, Style style, Weights weights) {
    Geometry line = Hulls.line(from, to);
    List<Paint> paints = new ArrayList<>();
    paints.add(Paint.Line.solid(line, Style.PAPER, weights.near() + 2 * weights.halo()));
    paints.add(new Paint.Line(line, style.mark(), weights.near(), false, DASH));
    paints.addAll(PlumbLine.ring(from, style, weights));
    paints.addAll(PlumbLine.ring(to, style, weights));
    return paints;
  }
}
