package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Side;
import goniograph.pose.Scene;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class DepthOrderTest {
  private static final Part.Id TRUNK = Part.Id.of(Kind.TRUNK);

  @Test
  void fromTheSideTheNearArmIsBeforeTheTrunkAndTheFarOneBehind() {
    List<Part.Id> order = order(Poses.still(Poses.standing(), Poses.SIDE));
    assertBefore(order, Part.Id.of(Kind.UPPER_ARM, Side.LEFT), TRUNK);
    assertBefore(order, TRUNK, Part.Id.of(Kind.UPPER_ARM, Side.RIGHT));
  }

  @Test
  void theHeadIsBeforeTheTrunkAndTheBodyBeforeItsChair() {
    List<Part.Id> order = order(Poses.lean(Poses.SIDE));
    assertBefore(order, TRUNK, Part.Id.of(Kind.HEAD));
    List<Integer> chair =
        order.stream().filter(id -> id.kind() == Kind.SUPPORT).map(order::indexOf).toList();
    int thigh = order.indexOf(Part.Id.of(Kind.THIGH, Side.RIGHT));
    assertTrue(chair.stream().allMatch(place -> place < thigh), order.toString());
  }

  @Test
  void aRingOfOverlapsIsStillSorted() {
    for (double yaw = -180; yaw < 180; yaw += 24) {
      Scene scene = Poses.still(Poses.sitting(), new goniograph.pose.Camera(yaw, 25));
      assertTrue(order(scene).size() == 14);
    }
  }

  private static List<Part.Id> order(Scene scene) {
    Projection paper = Projection.of(scene.camera(), 46);
    List<Part> parts = new SceneParts(paper, scene).of(scene.keys().get(0), false);
    boolean[] carries = new boolean[20];
    Arrays.fill(carries, true);
    return new DepthOrder(paper, scene.keys().get(0).skeleton(), carries)
        .sorted(parts).stream().map(Part::id).toList();
  }

  private static void assertBefore(List<Part.Id> order, Part.Id first, Part.Id second) {
    assertTrue(order.indexOf(first) < order.indexOf(second), order.toString());
  }
}
