package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Side;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Drawings through Batik, whose every report fails the picture. */
class FigurePngTest {
  @Test
  void aDrawingIs300DotsAnInchAndNotBlank() throws IOException {
    for (Style style : Style.values()) {
      Figure figure =
          Figure.of(
              Poses.armRaise(Poses.SIDE, Poses.arrow("hand"), Poses.angle("shoulder")),
              FigureOptions.STANDARD
                  .in(style)
                  .forTherapist()
                  .lettered(Poses.SQUARES, (side, group) -> Optional.of("arm")));
      BufferedImage picture = picture(figure);
      assertEquals(figure.width() / 25.4 * 300, picture.getWidth(), 1);
      double dark = dark(picture, Hulls.PAPER.toGeometry(figureBox(figure)));
      assertTrue(dark > .01 && dark < .3, "" + dark);
    }
  }

  @Test
  void whatIsNotSvgIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> FigurePng.of("<svg", 10));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            FigurePng.of(
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0 q\"/></svg>", 10));
  }

  /** On a copier that knows black and white only, the hatch still tells the working arm apart. */
  @Test
  void inOneBitTheWorkingArmIsToldApart() throws IOException {
    double still = armInk(Map.of());
    double working = armInk(Poses.arm(Side.RIGHT));
    assertTrue(working > still + .08, still + " " + working);
  }

  /** The share of black inside the right forearm, clear of its outline. */
  private static double armInk(Map<Side, java.util.Set<goniograph.body.Limb>> moving)
      throws IOException {
    var scene = Poses.with(Poses.still(Poses.standing(), Poses.SIDE), moving);
    Figure figure = Figure.of(scene, FigureOptions.STANDARD);
    Projection paper = Projection.of(scene.camera(), figure.bodyLength());
    Part arm =
        new SceneParts(paper, scene)
            .body(Poses.standing()).stream()
                .filter(p -> p.id().equals(Part.Id.of(Kind.FOREARM, Side.RIGHT)))
                .findFirst()
                .orElseThrow();
    Geometry inside = Hulls.widened(arm.outline(), -.45);
    var place = place(figure, paper, scene);
    return dark(
        picture(figure),
        org.locationtech.jts.geom.util.AffineTransformation.translationInstance(place.x, place.y)
            .transform(inside));
  }

  /** Where the scene's origin lies in the panel: the floor below it is at a known height. */
  private static Coordinate place(Figure figure, Projection paper, goniograph.pose.Scene scene) {
    var outlines = new SceneParts(paper, scene).body(Poses.standing());
    var bounds = new org.locationtech.jts.geom.Envelope();
    outlines.forEach(p -> bounds.expandToInclude(p.outline().getEnvelopeInternal()));
    Panel panel = figure.panels().get(0);
    return new Coordinate(panel.width() / 2 - bounds.centre().x, panel.floor());
  }

  private static org.locationtech.jts.geom.Envelope figureBox(Figure figure) {
    return new org.locationtech.jts.geom.Envelope(0, figure.width(), 0, figure.height());
  }

  private static BufferedImage picture(Figure figure) throws IOException {
    byte[] png = FigurePng.of(figure.svg("p", "t", "d"), figure.width());
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  private static double dark(BufferedImage picture, Geometry area) {
    double dots = 300 / 25.4;
    var box = area.getEnvelopeInternal();
    int dark = 0;
    int all = 0;
    for (int y = (int) (box.getMinY() * dots); y < box.getMaxY() * dots - 1; y++) {
      for (int x = (int) (box.getMinX() * dots); x < box.getMaxX() * dots - 1; x++) {
        var at = Hulls.PAPER.createPoint(new Coordinate((x + .5) / dots, (y + .5) / dots));
        if (area.contains(at)) {
          all++;
          dark += (picture.getRGB(x, y) & 255) < 128 ? 1 : 0;
        }
      }
    }
    return dark / (double) all;
  }
}
