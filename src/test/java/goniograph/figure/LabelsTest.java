package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Side;
import goniograph.pose.Camera;
import goniograph.pose.Scene;
import goniograph.type.Direction;
import goniograph.type.FaceOrder;
import goniograph.type.Family;
import goniograph.type.TextOutline;
import goniograph.type.Weight;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Labels stay on the page, off each other and off every mark (figure method, section 16). */
class LabelsTest {
  /** A language with its words for right arm, right leg and the first panel. */
  private record Tongue(String tag, String arm, String leg, String digits, boolean rightToLeft) {
    FigureOptions options(Style style) {
      Lettering lettering =
          (text, size) ->
              TextOutline.of(
                  text, FaceOrder.of(Family.LATIN, Weight.BOLD, tag), Direction.AUTO, size);
      return FigureOptions.STANDARD
          .in(style)
          .forTherapist()
          .fromOtherSide(rightToLeft)
          .lettered(
              lettering, (side, group) -> Optional.of(group == LimbWords.Group.ARM ? arm : leg))
          .ordered(new PanelWords(n -> digits.substring(n - 1, n), "–", rightToLeft));
    }
  }

  private static final List<Tongue> TONGUES =
      List.of(
          new Tongue("en", "right arm", "right leg", "12345", false),
          new Tongue("ar", "الذراع اليمنى", "الساق اليمنى", "١٢٣٤٥", true),
          new Tongue("ne", "दायाँ हात", "दायाँ खुट्टा", "१२३४५", false));

  @Test
  void everyLabelOfEveryPoseIsOnThePageAndOnNothingElse() {
    List<Scene> scenes = Library.scenes();
    for (Tongue tongue : TONGUES) {
      for (Style style : Style.values()) {
        for (Scene scene : scenes) {
          Figure.of(scene, tongue.options(style))
              .panels()
              .forEach(panel -> assertReadable(panel, scene.id() + " in " + tongue.tag));
        }
      }
    }
  }

  @Test
  void theSameForAnArmSeenFromAllAround() {
    for (double yaw : new double[] {0, 14, 48, 90, 166}) {
      Scene scene =
          Poses.armRaise(
              new Camera(yaw, 7),
              Poses.angle("shoulder"),
              Poses.angle("elbow"),
              Poses.angle("knee"),
              Poses.angle("hip"),
              Poses.arrow("hand"));
      Figure.of(scene, TONGUES.get(0).options(Style.INK))
          .panels()
          .forEach(panel -> assertReadable(panel, "yaw " + yaw));
    }
  }

  private static void assertReadable(Panel panel, String what) {
    Envelope page = new Envelope(0, panel.width(), 0, panel.height());
    for (Layer label : panel.layers()) {
      if (label.what().lettering()) {
        Geometry box = box(label);
        assertTrue(page.contains(box.getEnvelopeInternal()), what);
        assertFree(box, label, panel, what);
      }
    }
  }

  @SuppressWarnings("ReferenceEquality") // a layer is only itself
  private static void assertFree(Geometry box, Layer label, Panel panel, String what) {
    for (Layer other : panel.layers()) {
      if (other.what().lettering() && other != label) {
        assertEquals(0, Hulls.both(box, box(other)).getArea(), 1e-9, what);
      } else if (other.what().ordinal() > Layer.What.BODY.ordinal() && other != label) {
        other.ink().forEach(ink -> assertFalse(box.intersects(ink), what + " " + other.what()));
      }
    }
  }

  private static Geometry box(Layer label) {
    return label.paints().stream()
        .filter(Paint.Word.class::isInstance)
        .map(Paint::shape)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theSideWordStandsAtTheWorkingLimbAndNotInTheStart() {
    FigureOptions options =
        FigureOptions.STANDARD.lettered(Poses.SQUARES, (side, group) -> Optional.of("arm"));
    Figure figure = Figure.of(Poses.armRaise(Poses.SIDE), options);
    assertEquals(0, words(figure.panels().get(0)));
    assertEquals(1, words(figure.panels().get(1)));
  }

  private static long words(Panel panel) {
    return panel.layers().stream().filter(layer -> layer.what() == Layer.What.WORD).count();
  }

  /** Every drawing of one limb names it: nothing is so crowded that the word is left out. */
  @Test
  void everyWorkingLimbIsNamed() {
    for (Scene scene : Library.scenes()) {
      List<Panel> panels = Figure.of(scene, TONGUES.get(0).options(Style.INK)).panels();
      long named = panels.stream().filter(panel -> words(panel) > 0).count();
      assertFalse(WorkingLimb.of(scene).isPresent() && named == 0, scene.id());
    }
  }

  @Test
  void leftAndRightAreWordsAndLettersNeverFlip() {
    LimbWords words = (side, group) -> Optional.of(side == Side.LEFT ? "L" : "R");
    FigureOptions options = FigureOptions.STANDARD.lettered(LabelsTest::told, words);
    Scene right = Library.scene(ARM.formatted("right", "right"));
    Scene left = Library.scene(ARM.formatted("left", "left"));
    assertTrue(Figure.of(right, options).svg("a", "t", "d").contains("R 0"));
    assertTrue(Figure.of(left, options).svg("a", "t", "d").contains("L 0"));
  }

  private static final String ARM =
      """
      pose: one-arm
      base: standing
      contacts: [feet on floor]
      angles: {shoulder %s: flexion 80}
      moving: %s arm
      """;

  /** The path data of a text is the text itself, so that it can be found again. */
  private static TextOutline told(String text, double size) {
    return new TextOutline(text + " 0", size, 0, -size, size, 0, List.of());
  }
}
