package goniograph.figure;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.parser.AWTPathProducer;
import org.locationtech.jts.geom.Coordinate;

/** Path data read back by Batik's parser: the points of its flattened curves. */
final class PathPoints {
  private PathPoints() {}

  static List<Coordinate> of(String data) {
    List<Coordinate> points = new ArrayList<>();
    double[] at = new double[6];
    for (PathIterator i = shape(data).getPathIterator(null, .002); !i.isDone(); i.next()) {
      if (i.currentSegment(at) != PathIterator.SEG_CLOSE) {
        points.add(new Coordinate(at[0], at[1]));
      }
    }
    return points;
  }

  static Shape shape(String data) {
    try {
      return AWTPathProducer.createShape(new StringReader(data), PathIterator.WIND_EVEN_ODD);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
