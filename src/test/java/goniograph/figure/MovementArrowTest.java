package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class MovementArrowTest {
  private static final Geometry NOTHING = Hulls.PAPER.createPolygon();
  private final MovementArrow arrow = new MovementArrow(Weights.STANDARD);

  @Test
  void followsAQuadraticWayExactly() {
    Geometry way = Hulls.line(parabola(200).toArray(new Coordinate[0]));
    MovementArrow.Shape shape = arrow.along(parabola(9), NOTHING).get(0);
    Coordinate[] shaft = shape.shaft().getCoordinates();
    for (Coordinate c : List.of(shaft).subList(0, shaft.length - 1)) {
      assertEquals(0, way.distance(Hulls.PAPER.createPoint(c)), .02);
    }
  }

  @Test
  void stepsAsideFromWhatIsDrawn() {
    List<Coordinate> way =
        List.of(new Coordinate(0, 0), new Coordinate(10, 0), new Coordinate(20, 0));
    Geometry body = Hulls.widened(Hulls.line(new Coordinate(0, 0), new Coordinate(20, 0)), 3);
    MovementArrow.Shape shape = arrow.along(way, body).get(0);
    assertEquals(0, Hulls.both(shape.area(), body).getArea(), 1e-6);
  }

  @Test
  void aShortWayMakesAnArrowThatCanStillBeRead() {
    List<Coordinate> way =
        List.of(new Coordinate(0, 0), new Coordinate(1, 0), new Coordinate(2, 0));
    assertTrue(arrow.along(way, NOTHING).get(0).area().getEnvelopeInternal().getWidth() >= 7);
  }

  @Test
  void whatStandsStillHasNoArrow() {
    assertTrue(
        arrow.along(List.of(new Coordinate(0, 0), new Coordinate(.5, 0)), NOTHING).isEmpty());
  }

  private static List<Coordinate> parabola(int count) {
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double t = i / (count - 1.0);
      points.add(new Coordinate(40 * t, -60 * t * (1 - t)));
    }
    return points;
  }
}
