package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

class MovementArrowTest {
  private static final Covered NOTHING = new Covered();
  private static final Envelope PAGE = new Envelope(-100, 100, -100, 100);
  private final MovementArrow arrow = new MovementArrow(Weights.STANDARD);

  @Test
  void followsAQuadraticWayExactly() {
    Geometry way = Hulls.line(parabola(200).toArray(new Coordinate[0]));
    MovementArrow.Shape shape = along(parabola(9), NOTHING).orElseThrow();
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
    Covered taken = new Covered();
    taken.add(body);
    MovementArrow.Shape shape = along(way, taken).orElseThrow();
    assertFalse(shape.shaft().intersects(body));
    assertFalse(shape.heads().get(0).intersects(body));
  }

  @Test
  void aShortWayMakesAnArrowThatCanStillBeRead() {
    List<Coordinate> way =
        List.of(new Coordinate(0, 0), new Coordinate(1, 0), new Coordinate(2, 0));
    MovementArrow.Shape shape = along(way, NOTHING).orElseThrow();
    Envelope whole = shape.shaft().getEnvelopeInternal();
    whole.expandToInclude(shape.heads().get(0).getEnvelopeInternal());
    assertTrue(whole.getWidth() >= 7 - 1e-9);
  }

  @Test
  void whatStandsStillHasNoArrow() {
    assertTrue(along(List.of(new Coordinate(0, 0), new Coordinate(.5, 0)), NOTHING).isEmpty());
  }

  @Test
  void aSwingHasAHeadAtBothEnds() {
    MovementArrow.Shape shape = arrow.along(parabola(9), true, NOTHING, PAGE).orElseThrow();
    assertEquals(2, shape.heads().size());
    assertTrue(shape.heads().get(0).distance(point(40, 0)) < .01);
    assertTrue(shape.heads().get(1).distance(point(0, 0)) < .01);
  }

  @Test
  void staysOnThePage() {
    Envelope page = new Envelope(-1, 41, -50, -1);
    List<Coordinate> way =
        List.of(new Coordinate(0, 0), new Coordinate(20, 0), new Coordinate(40, 0));
    Geometry shaft = arrow.along(way, false, NOTHING, page).orElseThrow().shaft();
    assertTrue(page.contains(shaft.getEnvelopeInternal()));
  }

  private Optional<MovementArrow.Shape> along(List<Coordinate> way, Covered taken) {
    return arrow.along(way, false, taken, PAGE);
  }

  private static Geometry point(double x, double y) {
    return Hulls.PAPER.createPoint(new Coordinate(x, y));
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
