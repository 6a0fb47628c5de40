package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Skeleton;
import goniograph.pose.Scene;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

class StartOutlineTest {
  @Test
  void theStartIsDrawnClearOfTheBodyAndInPiecesThatCanBeSeen() {
    Geometry lines = lines(Poses.lean(Poses.SIDE));
    assertTrue(lines.getLength() > 20);
    for (int i = 0; i < lines.getNumGeometries(); i++) {
      assertTrue(lines.getGeometryN(i).getLength() >= 4);
    }
  }

  @Test
  void aStartThatTheBodyHidesIsLeftOut() {
    assertEquals(0, lines(Poses.armRaise(Poses.SIDE)).getLength());
  }

  private static Geometry lines(Scene scene) {
    SceneParts parts = new SceneParts(Projection.of(scene.camera(), 46), scene);
    Skeleton start = scene.keys().get(0).skeleton();
    Skeleton end = scene.keys().get(1).skeleton();
    return new StartOutline(scene, parts, Weights.STANDARD).lines(start, end, parts.body(end));
  }
}
