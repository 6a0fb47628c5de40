package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Every point of a drawn outline lies on the edge of a part (figure method, section 16). */
class OutlineTest {
  private static final double WITHIN = .05;

  @Test
  void outlinesLieOnTheEdgesOfParts() {
    var scene = Poses.lean(Poses.SIDE);
    Projection paper = Projection.of(scene.camera(), 46);
    List<Part> parts = new SceneParts(paper, scene).of(scene.keys().get(1), true);
    boolean[] carries = new boolean[20];
    Arrays.fill(carries, true);
    List<Part> sorted =
        new DepthOrder(paper, scene.keys().get(1).skeleton(), carries).sorted(parts);
    List<Geometry> edges = new ArrayList<>();
    for (Part part : sorted) {
      edges.add(part.outline().getBoundary());
      edges.addAll(part.inner());
    }
    Geometry all = Hulls.PAPER.buildGeometry(edges);
    double farthest = 0;
    int points = 0;
    for (Paint paint : new Painter(Style.INK, Weights.STANDARD, sorted).painted()) {
      if (paint instanceof Paint.Line line && line.width() > Weights.STANDARD.hatch()) {
        for (Coordinate c : PathPoints.of(PathData.of(line.shape()))) {
          farthest = Math.max(farthest, all.distance(Hulls.PAPER.createPoint(c)));
          points++;
        }
      }
    }
    assertTrue(farthest <= WITHIN, "farthest " + farthest);
    assertTrue(points > 500, "a sample worth the name: " + points);
  }
}
