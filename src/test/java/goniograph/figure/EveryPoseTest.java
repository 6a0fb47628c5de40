package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;

/** What holds for every pose (figure method, sections 15 and 16). */
class EveryPoseTest {
  private static final List<Scene> SCENES = Library.scenes();

  /** At the size of the standard sheet, drawing by drawing as a sheet holds them. */
  @Test
  void aDrawingStaysUnder40Kilobytes() {
    for (Style style : Style.values()) {
      for (Scene scene : SCENES) {
        for (Panel panel : Figure.of(scene, FigureOptions.STANDARD.in(style)).panels()) {
          int bytes = panel.svg("p", "t", "d").length();
          assertTrue(bytes < 40_000, scene.id() + " " + style + ": " + bytes);
        }
      }
    }
  }

  /** The renderer throws on every report, so a picture that comes is one without any. */
  @Test
  void theRendererHasNothingToReport() {
    for (Style style : Style.values()) {
      for (Scene scene : SCENES) {
        Figure figure = Figure.of(scene, FigureOptions.STANDARD.in(style).forTherapist());
        byte[] png = FigurePng.of(figure.svg("p", "t", "d"), figure.width());
        assertTrue(png.length > 2_000, scene.id());
      }
    }
  }

  /** Every corner of the body's outlines, as written, lies on the edge of some part. */
  @Test
  void outlinesLieOnTheEdgesOfParts() {
    for (Scene scene : SCENES) {
      Figure figure = Figure.of(scene, FigureOptions.STANDARD);
      Projection paper = Projection.of(scene.camera(), figure.bodyLength());
      Step step = Step.each(scene).get(0);
      SceneParts parts = new SceneParts(paper, scene);
      STRtree edges = new STRtree();
      Stage stage = Stage.of(scene, parts, paper, step);
      for (Part part : stage.parts()) {
        edges.insert(part.outline().getEnvelopeInternal(), part.outline().getBoundary());
      }
      edges.build();
      for (Paint paint : new Painter(Style.INK, Weights.STANDARD, stage.parts()).painted()) {
        if (paint instanceof Paint.Line line && line.width() == Weights.STANDARD.near()) {
          for (Coordinate c : PathPoints.of(PathData.of(line.shape()))) {
            assertTrue(near(c, edges) < .05, scene.id() + " " + c + " " + near(c, edges));
          }
        }
      }
    }
  }

  private static double near(Coordinate c, STRtree edges) {
    Geometry point = Hulls.PAPER.createPoint(c);
    var box = point.getEnvelopeInternal();
    box.expandBy(.1);
    List<?> found = edges.query(box);
    return found.stream().mapToDouble(edge -> point.distance((Geometry) edge)).min().orElse(9);
  }

  /** Two panels of a lying or crawling body in the sheet's box (job part 3.2: at least 45 mm). */
  @Test
  void wideBodiesUseTheWidthOfTheSheet() {
    List<String> small = new ArrayList<>();
    for (Scene scene : SCENES) {
      boolean wide = scene.base().matches("lying-.*|long-sitting|hands-and-knees");
      if (wide && scene.keys().size() <= 2 && scene.focus().isEmpty()) {
        FigureOptions half = FigureOptions.STANDARD.sized(87, 50, Weights.STANDARD);
        double length = Figure.of(scene, half).bodyLength();
        if (length < 45) {
          small.add(scene.id() + " " + Math.round(length));
        }
      }
    }
    assertEquals(List.of(), small);
  }
}
