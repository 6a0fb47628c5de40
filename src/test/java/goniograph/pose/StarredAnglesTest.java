package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.body.Joint;
import goniograph.body.Landmarks;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The demo library's worked-out angles: those that its table of exercises marks with a star,
 * because contacts make them and nobody types them. Each comes out within 2 degrees, from typed
 * angles that are up to 10 degrees off.
 */
class StarredAnglesTest {
  private static final double WITHIN = 2;

  private static List<MomentFacts> keys(String yaml) {
    return PoseSolver.solve(Poses.of(yaml)).facts().keys();
  }

  private static double hip(MomentFacts moment, Side side) {
    return moment.angles().get(Joint.HIP, side, Movement.FLEXION);
  }

  private static double knee(MomentFacts moment, Side side) {
    return moment.angles().get(Joint.KNEE, side, Movement.FLEXION);
  }

  private static double ankle(MomentFacts moment, Side side) {
    return moment.angles().get(Joint.ANKLE, side, Movement.DORSIFLEXION);
  }

  private static double tilt(MomentFacts moment) {
    return moment.angles().get(Joint.PELVIS, Movement.TILT);
  }

  private static final String BRIDGE =
      """
      pose: bridge
      base: lying-on-back
      supports: {bed: {height: 50}}
      contacts: [upper back on bed, feet on bed, hands on bed]
      start: {hip both: flexion 50, knee both: flexion 111}
      end: {pelvis: tilt back 30, hip both: flexion 0, knee both: flexion 85}
      """;

  @Test
  void bridgeUp() {
    MomentFacts up = keys(BRIDGE).get(1);
    assertEquals(0, hip(up, Side.LEFT), WITHIN, "trunk and thighs in one line");
    assertEquals(93, knee(up, Side.LEFT), WITHIN);
    assertEquals(-23, tilt(up), WITHIN);
    assertEquals(20, 90 - tilt(up) - knee(up, Side.LEFT), WITHIN, "the shin's tilt");
  }

  /**
   * The table's 50, 109 and 32 belong to a hip centre 10.3 cm above the bed: knee height .245 sin
   * 50, less shin .246 cos 32, less ankle .039 leaves it .060 of the body. The body here lies with
   * its hip centre 12.6 cm above the bed (pelvis half as deep as .068, .014 behind the hips, .008
   * flattened). So hip and knee come out as in the table, and the shin's tilt some 4 degrees less.
   * Checked against plain trigonometry of the triangle of hip, knee and ankle.
   */
  @Test
  void bridgeDown() {
    Solved solved = PoseSolver.solve(Poses.of(BRIDGE));
    MomentFacts down = solved.facts().keys().get(0);
    Skeleton s = solved.scene().keys().get(0).skeleton();
    Vec hip = Landmarks.hip(s, Side.RIGHT);
    Vec ankle = Landmarks.ankle(s, Side.RIGHT);
    double high = hip.y() - ankle.y();
    double far = Math.hypot(ankle.x() - hip.x(), ankle.z() - hip.z());
    double apart = Math.hypot(high, far);
    double knee =
        180 - Math.toDegrees(Math.acos((sq(.245) + sq(.246) - sq(apart)) / (2 * .245 * .246)));
    double atHip =
        Math.toDegrees(Math.acos((sq(.245) + sq(apart) - sq(.246)) / (2 * .245 * apart)));
    double thigh = atHip - Math.toDegrees(Math.atan2(high, far));
    assertEquals(12.6, 170 * (hip.y() - 50 / 170.0), .3, "hip centre above the bed in cm");
    assertEquals(knee, knee(down, Side.RIGHT), .5);
    assertEquals(thigh, hip(down, Side.RIGHT), .5);
    assertEquals(109, knee(down, Side.RIGHT), WITHIN);
    assertEquals(50, hip(down, Side.RIGHT), WITHIN);
    assertEquals(32, 90 - (knee - thigh), 5, "the shin's tilt, of the table's lower hip");
  }

  private static double sq(double x) {
    return x * x;
  }

  @ParameterizedTest
  @CsvSource({"45, 85", "55, 71"})
  void chair(int seat, double hip) {
    String chair =
        """
        pose: chair
        base: sitting
        supports: {chair: {height: %d}}
        contacts: [hips on chair, feet on floor]
        angles: {pelvis: tilt forward 0, lumbar: flexion 0, hip both: flexion 80, knee both: flexion 90}
        """;
    MomentFacts sits = keys(chair.formatted(seat)).get(0);
    assertEquals(hip, hip(sits, Side.LEFT), WITHIN);
    if (seat == 45) {
      assertEquals(95, knee(sits, Side.LEFT), WITHIN);
    }
  }

  /** The foot 25 cm ahead, the other leg straight. */
  @ParameterizedTest
  @CsvSource({"10, 43", "15, 58", "20, 70"})
  void stepUp(int step, double knee) {
    String up =
        """
        pose: up
        base: stepping
        supports: {step: {height: %d}}
        contacts: [left foot on floor, right foot on step]
        angles: {hip right: flexion 50, knee right: flexion 60}
        """;
    Solved solved = PoseSolver.solve(Poses.of(up.formatted(step)));
    Skeleton s = solved.scene().keys().get(0).skeleton();
    double ahead = Landmarks.ankle(s, Side.RIGHT).x() - Landmarks.ankle(s, Side.LEFT).x();
    assertEquals(25, 170 * ahead, 2, "the foot is ahead by");
    assertEquals(0, knee(solved.facts().keys().get(0), Side.LEFT), .5);
    assertEquals(knee, knee(solved.facts().keys().get(0), Side.RIGHT), WITHIN);
  }

  /**
   * The table's 80 is the angle of a thigh tipped back by 10 with a level shin. The shin is not
   * quite level: at 50 of plantarflexion the toe tip (.096 ahead of the ankle, .0265 below, radius
   * .0125) holds the ankle .049 of the body above the mat, the knee cap holds the knee .035 above
   * it.
   */
  @Test
  void frontOfHipStretch() {
    String stretch =
        """
        pose: stretch
        base: half-kneeling
        supports: {mat: {}}
        contacts: [right knee on mat, right toes on mat, left foot on mat]
        angles:
          hip right: "extension 10, abduction 0, external rotation 0"
          ankle right: plantarflexion 50
          hip left: flexion 90
          knee left: flexion 90
        """;
    double shin = 0;
    for (int i = 0; i < 20; i++) { // the shin tips the foot, which tips the shin
      double p = Math.toRadians(50 + shin);
      double ankle = .096 * Math.cos(p) - .0265 * Math.sin(p) + .0125;
      shin = Math.toDegrees(Math.asin((ankle - .035) / .246));
    }
    assertEquals(80 + shin, knee(keys(stretch).get(0), Side.RIGHT), .2);
    assertEquals(80, knee(keys(stretch).get(0), Side.RIGHT), WITHIN + 3);
  }

  /** As a tape at the wall tells: toes, knee cap and shin make a right triangle with the wall. */
  @ParameterizedTest
  @CsvSource({"6", "8", "10"})
  void kneeToWall(int toes) {
    String wall =
        """
        pose: knee-to-wall
        base: standing
        supports: {wall: {distance: %d}}
        contacts: [feet on floor]
        angles: {hip left: extension 14}
        start: {hip right: flexion 12, knee right: flexion 20}
        end contacts: [right knee on wall]
        end: {hip right: flexion 15, knee right: flexion 45}
        """;
    MomentFacts bent = keys(wall.formatted(toes)).get(1);
    double shin = Math.toDegrees(Math.asin((toes / 170.0 + .1085 - .035) / .246));
    assertEquals(shin, ankle(bent, Side.RIGHT), 1);
    if (toes == 8) {
      assertEquals(30, ankle(bent, Side.RIGHT), WITHIN);
      assertEquals(45, knee(bent, Side.RIGHT), WITHIN);
    }
    assertEquals(0, bent.worstMissCm(), .5, "heels down");
  }
}
