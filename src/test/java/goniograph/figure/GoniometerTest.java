package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.BasePosture;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Landmarks;
import goniograph.body.Movement;
import goniograph.body.Posture;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import goniograph.pose.Camera;
import goniograph.pose.Goniometer;
import org.junit.jupiter.api.Test;

class GoniometerTest {
  private static final JointAngles BENT =
      BasePosture.STANDING
          .angles()
          .with(Joint.HIP, Side.RIGHT, Movement.FLEXION, 60)
          .with(Joint.KNEE, Side.RIGHT, Movement.FLEXION, 84)
          .with(Joint.ELBOW, Side.RIGHT, Movement.FLEXION, 42);

  private final Skeleton skeleton = Poses.skeleton(BasePosture.STANDING, BENT, .53);

  @Test
  void readsTheAngleThatWasSet() {
    assertEquals(84, at("knee").degrees(), 1e-6);
    assertEquals(42, at("elbow").degrees(), 1e-6);
  }

  /** The law of cosines on the three joint centres, as a second method. */
  @Test
  void agreesWithTheLawOfCosines() {
    Vec hip = Landmarks.hip(skeleton, Side.RIGHT);
    Vec knee = Landmarks.knee(skeleton, Side.RIGHT);
    Vec ankle = Landmarks.ankle(skeleton, Side.RIGHT);
    double a = hip.minus(knee).length();
    double b = ankle.minus(knee).length();
    double c = ankle.minus(hip).length();
    double inner = Math.toDegrees(Math.acos((a * a + b * b - c * c) / (2 * a * b)));
    assertEquals(180 - inner, at("knee").degrees(), 1e-6);
  }

  @Test
  void theCraniovertebralAngleIsThatOfThePosture() {
    assertEquals(Posture.craniovertebral(skeleton), at("cva").degrees(), 1e-6);
  }

  @Test
  void anAngleSeenEdgeOnIsRefusedWithItsShare() {
    var scene = Poses.still(skeleton, new Camera(90, 0), Poses.angle("knee"));
    var refusals = Figure.of(scene, FigureOptions.STANDARD.forTherapist()).refusals();
    assertEquals(1, refusals.size());
    assertTrue(refusals.get(0).seen() < .35);
    assertEquals("side", refusals.get(0).better());
    var side = Poses.still(skeleton, Poses.SIDE, Poses.angle("knee"));
    assertTrue(Figure.of(side, FigureOptions.STANDARD.forTherapist()).refusals().isEmpty());
  }

  @Test
  void patientsPagesHaveNoAngles() {
    var plain = Poses.still(skeleton, Poses.SIDE);
    var marked =
        Poses.still(skeleton, Poses.SIDE, Poses.angle("knee"), new goniograph.pose.Mark.Balance());
    var options = FigureOptions.STANDARD.lettered(Poses.SQUARES, LimbWords.NONE);
    assertEquals(
        Figure.of(plain, options).svg("a", "t", "d"),
        Figure.of(marked, options).svg("a", "t", "d"));
  }

  private Goniometer at(String joint) {
    return Goniometer.at(skeleton, joint, Side.RIGHT).orElseThrow();
  }
}
