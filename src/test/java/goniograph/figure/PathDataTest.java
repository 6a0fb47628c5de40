package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class PathDataTest {
  @Test
  void aBoxIsFourStraightSteps() {
    Geometry box =
        Hulls.hull(
            java.util.List.of(
                new Coordinate(0, 0),
                new Coordinate(2, 0),
                new Coordinate(2, 1.5),
                new Coordinate(0, 1.5)));
    assertEquals("M0 0l0 1.5 2 0 0-1.5z", PathData.of(box));
  }

  @Test
  void numbersAreAsShortAsTheyCanBe() {
    assertEquals("0", PathData.number(0.001));
    assertEquals(".05", PathData.number(0.05));
    assertEquals("-.5", PathData.number(-0.5));
    assertEquals("1.2", PathData.number(1.2));
    assertEquals("100", PathData.number(100));
    assertEquals("-12.34", PathData.number(-12.34));
  }

  @Test
  void aCircleComesBackAsACircle() {
    for (double radius : new double[] {.6, 2, 9}) {
      Geometry circle = Hulls.circle(new Coordinate(20, 20), radius);
      for (Coordinate c : PathPoints.of(PathData.of(circle))) {
        assertEquals(radius, c.distance(new Coordinate(20, 20)), .04);
      }
    }
  }

  @Test
  void curvesTakeLessRoomThanTheirCorners() {
    String path = PathData.of(Hulls.circle(new Coordinate(20, 20), 9));
    assertTrue(path.length() < 1200, path);
  }
}
