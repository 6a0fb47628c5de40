package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.body.Vec;
import goniograph.pose.Camera;
import org.junit.jupiter.api.Test;

/** The definitions of the figure method, section 5: yaw 0 from the right, 90 from the front. */
class ProjectionTest {
  @Test
  void fromTheRightThePersonFacesRight() {
    Projection paper = Projection.of(new Camera(0, 0), 100);
    assertEquals(100, paper.at(new Vec(1, 0, 0)).x, 1e-9);
    assertEquals(-100, paper.at(new Vec(0, 1, 0)).y, 1e-9);
    assertEquals(1, paper.depth(new Vec(0, 0, 1)), 1e-9);
  }

  @Test
  void fromTheFrontThePersonsRightIsLeftOnPaper() {
    Projection paper = Projection.of(new Camera(90, 0), 100);
    assertEquals(-100, paper.at(new Vec(0, 0, 1)).x, 1e-9);
    assertEquals(1, paper.depth(new Vec(1, 0, 0)), 1e-9);
  }

  @Test
  void theThreeAxesOfTheViewStandSquareInEveryView() {
    for (double yaw = -180; yaw < 180; yaw += 17) {
      for (double elevation = -40; elevation <= 80; elevation += 13) {
        Projection paper = Projection.of(new Camera(yaw, elevation), 1);
        assertEquals(0, paper.right().dot(paper.up()), 1e-12);
        assertEquals(0, paper.right().dot(paper.toViewer()), 1e-12);
        assertEquals(1, paper.up().length(), 1e-12);
        assertEquals(
            1, paper.right().cross(paper.up()).dot(paper.toViewer()), 1e-12, "right-handed");
      }
    }
  }
}
