package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/**
 * What a therapist's photographer would choose: movements seen in their own plane, walls from the
 * front (common practice, no source).
 */
class BestViewTest {
  @Test
  void aMovementForwardIsSeenFromTheSide() {
    assertEquals("side", view("start: {hip right: flexion 0}\nend: {hip right: flexion 70}"));
  }

  @Test
  void aMovementSidewaysIsSeenFromBehind() {
    assertEquals(
        "back", view("start: {shoulder right: abduction 10}\nend: {shoulder right: abduction 90}"));
  }

  @Test
  void aStillPoseKeepsTheViewOfItsPosture() {
    assertEquals("side", view("angles: {hip right: flexion 20}"));
  }

  @Test
  void anAngleIsSeenInItsOwnPlane() {
    assertEquals(
        "back", view("angles: {shoulder right: abduction 80}\nmarks: [angle right shoulder]"));
  }

  @Test
  void aTypedCameraWins() {
    PoseFile pose =
        Poses.of("pose: p\nbase: standing\nview: auto\ncamera: [30, 5]\ncontacts: [feet on floor]");
    assertEquals(new Camera(30, 5), PoseSolver.solve(pose).scene().camera());
  }

  private static String view(String lines) {
    String pose = "pose: p\nbase: standing\nview: auto\nmoving: right leg\n" + lines;
    return PoseSolver.solve(Poses.of(pose)).scene().view();
  }
}
