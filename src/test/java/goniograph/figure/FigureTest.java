package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.pose.Mark;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class FigureTest {
  /** Standard sheet: body length on paper at least 45 mm (job part 3.2). */
  @Test
  void aStandingBodyIsAtLeast45MmInTheStandardLayout() {
    Figure figure = Figure.of(Poses.still(Poses.standing(), Poses.SIDE), FigureOptions.STANDARD);
    assertTrue(figure.bodyLength() >= 45, "" + figure.bodyLength());
  }

  @Test
  void nothingLeavesThePanel() {
    for (Style style : Style.values()) {
      Figure figure =
          Figure.of(
              Poses.lean(Poses.SIDE, new Mark.Ghost(), Poses.arrow("nose")),
              FigureOptions.STANDARD.in(style));
      for (Panel panel : figure.panels()) {
        Envelope page = new Envelope(-.01, panel.width() + .01, -.01, panel.height() + .01);
        assertTrue(panel.height() <= FigureOptions.STANDARD.height() + 1e-9);
        for (Paint paint : panel.paints()) {
          Envelope box = paint.shape().getEnvelopeInternal();
          assertTrue(page.contains(box), paint.colour() + box);
        }
      }
    }
  }

  @Test
  void allPanelsHaveOneFloorAndTheChairAtOnePlace() {
    Figure figure = Figure.of(Poses.lean(Poses.SIDE), FigureOptions.STANDARD);
    Panel sit = figure.panels().get(0);
    Panel lean = figure.panels().get(1);
    assertEquals(sit.floor(), lean.floor(), 1e-9);
    assertEquals(leftmost(sit), leftmost(lean), .01);
  }

  /** The chair's back is the leftmost thing with the weight of a support. */
  private static double leftmost(Panel panel) {
    return panel.paints().stream()
        .filter(p -> p instanceof Paint.Line l && l.width() == Weights.STANDARD.support())
        .mapToDouble(p -> p.shape().getEnvelopeInternal().getMinX())
        .min()
        .orElseThrow();
  }

  @Test
  void theOtherSideFacesTheOtherWayWithoutFlipping() {
    var scene = Poses.still(Poses.standing(), Poses.SIDE);
    var camera = new goniograph.pose.Camera(180 - Poses.SIDE.yaw(), Poses.SIDE.elevation());
    var turned = Poses.still(Poses.standing(), camera);
    assertEquals(
        Figure.of(turned, FigureOptions.STANDARD).svg("a", "t", "d"),
        Figure.of(scene, FigureOptions.STANDARD.fromOtherSide(true)).svg("a", "t", "d"));
  }

  @Test
  void startAndEndShareOnePanelWhereTheStartCanBeSeen() {
    FigureOptions one = FigureOptions.STANDARD.inOnePanel();
    assertEquals(1, Figure.of(Poses.lean(Poses.SIDE), one).panels().size());
    assertEquals(
        2, Figure.of(Poses.armRaise(Poses.SIDE), one).panels().size(), "the trunk hides the arm");
  }

  @Test
  void theSameSceneGivesTheSameBytes() {
    var scene = Poses.lean(Poses.SIDE, new Mark.Ghost());
    assertEquals(
        Figure.of(scene, FigureOptions.STANDARD).svg("a", "t", "d"),
        Figure.of(scene, FigureOptions.STANDARD).svg("a", "t", "d"));
  }
}
