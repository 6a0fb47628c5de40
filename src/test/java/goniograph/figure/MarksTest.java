package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.pose.Scene;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Each mark where the figure method, section 9, wants it. */
class MarksTest {
  private static final String STANDING =
      """
      pose: marks
      base: standing
      contacts: [feet on floor]
      """;

  @Test
  void thePlumbLineIsUprightThroughTheShoulder() {
    Scene scene = Library.scene(STANDING + "marks: [plumb]\n");
    Geometry line = paint(panel(scene, 0), Layer.What.PLUMB, 1).shape();
    assertEquals(line.getCoordinates()[0].x, line.getCoordinates()[1].x, 1e-9);
    Skeleton s = scene.keys().get(0).skeleton();
    double ear = Landmarks.tragus(s, Side.RIGHT).y();
    double shoulder = Landmarks.shoulder(s, Side.RIGHT).y();
    double scale = Figure.of(scene, FigureOptions.STANDARD).bodyLength();
    double up = Projection.of(scene.camera(), 1).up().y();
    assertEquals((ear - shoulder + .2) * scale * up, line.getLength(), .3);
  }

  @Test
  void aTargetLiesWithinItsLimbAndItsHatchWithinIt() {
    for (String target : List.of("right thigh back", "left calf", "right arm back")) {
      Scene scene = Library.scene(STANDING + "view: back\nmarks: [target " + target + "]\n");
      List<Paint> paints = layer(panel(scene, 0), Layer.What.TARGET).paints();
      Geometry area = paints.get(0).shape();
      assertTrue(area.getArea() > 8, target + area.getArea());
      assertEquals(0, Hulls.minus(paints.get(1).shape(), Hulls.widened(area, .01)).getLength());
    }
  }

  @Test
  void aTargetOnTheFarSideIsRefused() {
    Scene scene = Library.scene(STANDING + "view: back\nmarks: [target left thigh front]\n");
    List<Refusal> refusals = Figure.of(scene, FigureOptions.STANDARD).refusals();
    assertEquals(List.of("front"), refusals.stream().map(Refusal::better).toList());
  }

  @Test
  void aPushGoesWhereItIsTold() {
    Scene scene = Library.scene(STANDING + "view: side-flat\nmarks: [arrow right hand down]\n");
    Coordinate[] shaft = paint(panel(scene, 0), Layer.What.ARROW, 0).shape().getCoordinates();
    assertEquals(shaft[0].x, shaft[shaft.length - 1].x, 1e-6);
    assertTrue(shaft[shaft.length - 1].y > shaft[0].y);
  }

  @Test
  void aPushAgainstAWallGoesIntoTheWall() {
    Scene scene =
        Library.scene(
            """
            pose: press
            base: standing
            view: side
            supports: {wall: {}}
            contacts: [feet on floor, hands on wall at 130 cm]
            angles: {shoulder both: flexion 80, elbow both: flexion 40}
            marks: [arrow right hand]
            """);
    Coordinate[] shaft = paint(panel(scene, 0), Layer.What.ARROW, 0).shape().getCoordinates();
    assertTrue(shaft[shaft.length - 1].x > shaft[0].x + 3);
  }

  @Test
  void aStillPointWithoutADirectionHasNoArrow() {
    Scene scene = Library.scene(STANDING + "marks: [arrow nose]\n");
    assertTrue(panel(scene, 0).layers().stream().noneMatch(l -> l.what() == Layer.What.ARROW));
  }

  @Test
  void theLandmarkLineJoinsItsTwoPoints() {
    Scene scene = Library.scene(STANDING + "view: side\nmarks: [landmark right hand right knee]\n");
    Coordinate[] line = paint(panel(scene, 0), Layer.What.LANDMARK, 1).shape().getCoordinates();
    Projection paper =
        Projection.of(scene.camera(), Figure.of(scene, FigureOptions.STANDARD).bodyLength());
    Skeleton s = scene.keys().get(0).skeleton();
    Coordinate hand = paper.at(Landmarks.palm(s, Side.RIGHT));
    Coordinate knee = paper.at(Landmarks.knee(s, Side.RIGHT));
    assertEquals(knee.x - hand.x, line[1].x - line[0].x, 1e-6);
    assertEquals(knee.y - hand.y, line[1].y - line[0].y, 1e-6);
  }

  private static final String BEND =
      """
      pose: bend
      base: standing
      view: side
      contacts: [feet on floor]
      start: {pelvis: tilt forward 0}
      end: {pelvis: tilt forward 45, hip both: flexion 55, knee both: flexion 15}
      wrong: {pelvis: tilt forward 10, lumbar: flexion 40, hip both: flexion 15}
      """;

  @Test
  void theWrongWayIsASmallerPanelWithACross() {
    Figure figure = Figure.of(Library.scene(BEND), FigureOptions.STANDARD);
    assertEquals(2, figure.panels().size());
    Panel wrong = figure.wrong().orElseThrow();
    assertTrue(wrong.height() < figure.panels().get(0).height());
    assertEquals(2, layer(wrong, Layer.What.CROSS).paints().get(0).shape().getNumGeometries());
    assertEquals(0, wrong.number());
    assertTrue(figure.width() > figure.panels().get(0).width() + figure.panels().get(1).width());
  }

  @Test
  void patientsPanelsCarryNeitherAnglesNorBalance() {
    Scene scene = Library.scene(STANDING + "marks: [balance, angle right knee]\n");
    assertTrue(panel(scene, 0).layers().stream().noneMatch(MarksTest::clinical));
  }

  private static boolean clinical(Layer layer) {
    return layer.what() == Layer.What.ANGLE || layer.what() == Layer.What.BALANCE;
  }

  /** The order of panels turns on a right-to-left page; the drawings stay as they are. */
  @Test
  void rightToLeftTurnsTheOrderAlone() {
    Scene scene = Library.scene(BEND);
    PanelWords arabic = new PanelWords(n -> "", "", true);
    Figure left = Figure.of(scene, FigureOptions.STANDARD);
    Figure right = Figure.of(scene, FigureOptions.STANDARD.ordered(arabic));
    assertEquals(left.panels().get(0).svg("a", "t", "d"), right.panels().get(0).svg("a", "t", "d"));
    String svg = right.svg("a", "t", "d");
    assertTrue(svg.indexOf("panel-2") < svg.indexOf("panel-1"));
    assertFalse(
        left.svg("a", "t", "d").indexOf("panel-2") < left.svg("a", "t", "d").indexOf("panel-1"));
  }

  @Test
  void aFocusShowsItsPartLarge() {
    String hand = STANDING + "focus: right hand\n";
    Figure whole = Figure.of(Library.scene(STANDING), FigureOptions.STANDARD);
    Figure close = Figure.of(Library.scene(hand), FigureOptions.STANDARD);
    assertTrue(close.bodyLength() > 3 * whole.bodyLength());
    assertTrue(close.height() <= FigureOptions.STANDARD.height() + 1e-9);
  }

  private static Panel panel(Scene scene, int number) {
    return Figure.of(scene, FigureOptions.STANDARD).panels().get(number);
  }

  private static Layer layer(Panel panel, Layer.What what) {
    return panel.layers().stream().filter(l -> l.what() == what).findFirst().orElseThrow();
  }

  private static Paint paint(Panel panel, Layer.What what, int number) {
    return layer(panel, what).paints().get(number);
  }
}
