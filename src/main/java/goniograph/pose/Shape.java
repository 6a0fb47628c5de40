package goniograph.pose;

import goniograph.body.Vec;
import java.util.List;

/** What a thing is made of, in body heights. */
public sealed interface Shape permits Box, Shape.Rod, Shape.Ball, Shape.Strip, Shape.Ring {

  /** A straight round bar, cut flat at its ends. */
  record Rod(Vec from, Vec to, double radius) implements Shape {}

  /** A ball. */
  record Ball(Vec centre, double radius) implements Shape {}

  /** A flat band along a line of points, drawn as wide on paper as it must be to be seen. */
  record Strip(List<Vec> line) implements Shape {
    public Strip {
      line = List.copyOf(line);
    }
  }

  /**
   * A flat band once round a part of the body.
   *
   * @param a from the middle to the band, and {@code b} across it
   */
  record Ring(Vec centre, Vec a, Vec b) implements Shape {}
}
