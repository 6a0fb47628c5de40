package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.pose.Scene;
import goniograph.testing.BitPicture;
import goniograph.type.TextOutline;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * What the standard sheet looks like after a copy at 100 % and one at 60 %, black and white alone,
 * at 200 dots an inch (job part 2, F5): the marks are still there, apart from each other.
 */
class LegibilityTest {
  private static final Lettering BARS =
      (text, size) ->
          new TextOutline(
              "M0 0h" + 2 * size + "v-" + size + "h-" + 2 * size + "z",
              2 * size,
              0,
              -size,
              2 * size,
              0,
              List.of());

  private static final FigureOptions OPTIONS =
      FigureOptions.STANDARD.lettered(BARS, (side, group) -> Optional.of("leg"));

  private static final Scene SCENE =
      Library.scene(
          """
          pose: knee-lift
          base: standing
          view: side
          supports: {counter: {side: left, height: 90, distance: 14}}
          contacts: [left foot on floor, left hand on counter]
          angles: {shoulder left: "abduction 26", elbow left: flexion 42}
          start: {hip right: flexion 5}
          end: {hip right: flexion 70, knee right: flexion 80}
          moving: right leg
          marks: [arrow right knee]
          """);

  private final Panel panel = Figure.of(SCENE, OPTIONS).panels().get(1);
  private final BitPicture copy = copied(panel);

  private static BitPicture copied(Panel panel) {
    try {
      byte[] png = FigurePng.of(panel.svg("p", "t", "d"), panel.width());
      return BitPicture.of(png, panel.width()).copied(1, 200).copied(.6, 200);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Shaft and head stay one piece, and white stays between them and everything else. */
  @Test
  void theArrowIsOnePieceApartFromAllElse() {
    Geometry arrow = Hulls.union(layer(Layer.What.ARROW).ink());
    assertEquals(1, copy.pieces(Hulls.widened(arrow, .15)));
    assertTrue(copy.black(Hulls.widened(arrow, -.15)) > .8);
    Geometry round = Hulls.minus(Hulls.widened(arrow, .42), Hulls.widened(arrow, .22));
    assertTrue(copy.black(round) < .25, "" + copy.black(round));
  }

  /** From the base to the tip the head grows narrower, as a triangle does. */
  @Test
  void theArrowHeadKeepsItsTriangle() {
    Geometry head =
        layer(Layer.What.ARROW).paints().stream()
            .filter(Paint.Area.class::isInstance)
            .map(Paint::shape)
            .findFirst()
            .orElseThrow();
    assertTrue(copy.black(Hulls.widened(head, -.2)) > .95);
    Envelope box = head.getEnvelopeInternal();
    Geometry corners = Hulls.minus(Hulls.PAPER.toGeometry(box), Hulls.widened(head, .2));
    assertTrue(copy.black(corners) < .3, "" + copy.black(corners));
  }

  /** A scan across the hatch counts the lines that were drawn. */
  @Test
  void hatchLinesStaySeparateLines() {
    Paint.Line hatch =
        layer(Layer.What.BODY).paints().stream()
            .filter(p -> p instanceof Paint.Line l && l.width() == Weights.STANDARD.hatch())
            .map(Paint.Line.class::cast)
            .findFirst()
            .orElseThrow();
    Geometry longest = longest(hatch.shape());
    Coordinate middle = longest.getCentroid().getCoordinate();
    double reach = 1.6 * Weights.STANDARD.pitch();
    double d = reach / Math.sqrt(2);
    Coordinate from = new Coordinate(middle.x - d, middle.y - d);
    Coordinate to = new Coordinate(middle.x + d, middle.y + d);
    int drawn = Hulls.both(Hulls.line(from, to), hatch.shape()).getNumGeometries();
    assertTrue(drawn >= 2, "" + drawn);
    assertEquals(drawn, copy.runs(from, to));
  }

  private static Geometry longest(Geometry lines) {
    Geometry longest = lines.getGeometryN(0);
    for (int i = 1; i < lines.getNumGeometries(); i++) {
      longest =
          lines.getGeometryN(i).getLength() > longest.getLength() ? lines.getGeometryN(i) : longest;
    }
    return longest;
  }

  @Test
  void theSideWordStandsFree() {
    Geometry box =
        layer(Layer.What.WORD).paints().stream()
            .filter(Paint.Word.class::isInstance)
            .map(Paint::shape)
            .findFirst()
            .orElseThrow();
    assertTrue(copy.black(Hulls.widened(box, -.8)) > .9);
    Geometry rim = Hulls.minus(box, Hulls.widened(box, -.25));
    assertTrue(copy.black(rim) < .12, "" + copy.black(rim));
  }

  /** The working limb is darker than the same limb at rest in the first panel. */
  @Test
  void theWorkingLimbIsDarkerThanTheRest() {
    Panel start = Figure.of(SCENE, OPTIONS).panels().get(0);
    Geometry hatch =
        layer(Layer.What.BODY).paints().stream()
            .filter(p -> p instanceof Paint.Line l && l.width() == Weights.STANDARD.hatch())
            .map(Paint::shape)
            .findFirst()
            .orElseThrow();
    Geometry limb = Hulls.widened(Hulls.hull(List.of(longest(hatch).getCoordinates())), .8);
    assertTrue(copy.black(limb) > .2, "" + copy.black(limb));
    assertEquals(panel.width(), start.width());
  }

  private Layer layer(Layer.What what) {
    return panel.layers().stream().filter(l -> l.what() == what).findFirst().orElseThrow();
  }
}
