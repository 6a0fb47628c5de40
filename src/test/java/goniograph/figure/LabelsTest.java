package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.pose.Camera;
import goniograph.pose.Scene;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/** Labels stay on the page and off each other (figure method, section 16). */
class LabelsTest {
  private static final FigureOptions OPTIONS =
      FigureOptions.STANDARD
          .forTherapist()
          .lettered(Poses.SQUARES, (side, group) -> Optional.of("right " + group));

  @Test
  void everyLabelIsOnThePageAndNoneOverlaps() {
    for (double yaw : new double[] {0, 14, 48, 90, 166}) {
      Scene scene =
          Poses.armRaise(
              new Camera(yaw, 7),
              Poses.angle("shoulder"),
              Poses.angle("elbow"),
              Poses.angle("knee"),
              Poses.angle("hip"),
              Poses.arrow("hand"));
      Figure.of(scene, OPTIONS).panels().forEach(LabelsTest::assertReadable);
    }
  }

  private static void assertReadable(Panel panel) {
    List<Paint> words = panel.paints().stream().filter(Paint.Word.class::isInstance).toList();
    Envelope page = new Envelope(0, panel.width(), 0, panel.height());
    for (Paint word : words) {
      assertTrue(page.contains(word.shape().getEnvelopeInternal()), word.toString());
      for (Paint other : words) {
        if (other != word) {
          assertEquals(0, Hulls.both(word.shape(), other.shape()).getArea(), 1e-9);
        }
      }
    }
  }

  @Test
  void theSideWordStandsAtTheWorkingLimbAndNotInTheStart() {
    Figure figure = Figure.of(Poses.armRaise(Poses.SIDE), OPTIONS);
    assertEquals(0, words(figure.panels().get(0)));
    assertEquals(1, words(figure.panels().get(1)));
  }

  private static long words(Panel panel) {
    return panel.paints().stream().filter(Paint.Word.class::isInstance).count();
  }
}
