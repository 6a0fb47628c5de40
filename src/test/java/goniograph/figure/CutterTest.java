package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Against the general overlay of JTS, on random lines and areas. */
class CutterTest {
  private final Random random = new Random(7);

  @Test
  void cutsAsTheGeneralOverlayDoes() {
    for (int i = 0; i < 200; i++) {
      Geometry area = Hulls.widened(walk(6), .2 + random.nextDouble());
      Geometry line = walk(9);
      Cutter cutter = new Cutter(area);
      assertSame(Hulls.both(line, area), cutter.inside(line));
      assertSame(Hulls.minus(line, area), cutter.outside(line));
    }
  }

  @Test
  void leavesOutOnlyWhatLiesInAllAreas() {
    for (int i = 0; i < 100; i++) {
      Geometry a = Hulls.widened(walk(4), 1);
      Geometry b = Hulls.widened(walk(4), 1);
      Geometry line = walk(9);
      Geometry kept = Cutter.outsideAll(line, List.of(new Cutter(a), new Cutter(b)));
      assertSame(Hulls.minus(line, Hulls.both(a, b)), kept);
    }
  }

  @Test
  void holesAreNoPartOfAnArea() {
    Geometry ring =
        Hulls.minus(Hulls.circle(new Coordinate(0, 0), 3), Hulls.circle(new Coordinate(0, 0), 1));
    Geometry line = Hulls.line(new Coordinate(-5, .1), new Coordinate(5, .1));
    assertEquals(2, new Cutter(ring).inside(line).getNumGeometries());
    assertEquals(3, new Cutter(ring).outside(line).getNumGeometries());
  }

  private static void assertSame(Geometry expected, Geometry actual) {
    assertEquals(expected.getLength(), actual.getLength(), 1e-6);
    if (actual.getLength() > 0) {
      assertEquals(0, Hulls.minus(actual, Hulls.widened(expected, 1e-6)).getLength(), 1e-6);
    }
  }

  private Geometry walk(int steps) {
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      points.add(new Coordinate(8 * random.nextDouble(), 8 * random.nextDouble()));
    }
    return Hulls.line(points.toArray(new Coordinate[0]));
  }
}
