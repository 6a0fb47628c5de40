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

  /** The shin's inclination from vertical. */
  private static double shinTilt(Skeleton s) {
    Vec shin = Landmarks.ankle(s, Side.RIGHT).minus(Landmarks.knee(s, Side.RIGHT)).unit();
    return Math.toDegrees(Math.acos(-shin.y()));
  }

  private static final String BRIDGE =
      """
      pose: bridge
      base: lying-on-back
      supports: {bed: {height: 50}}
      contacts: [upper back on bed, feet on bed, hands on bed]
      start: {hip both: flexion 50, knee both: flexion 109}
      end: {pelvis: tilt back 30, hip both: flexion 0, knee both: flexion 85}
      """;

  @Test
  void bridge() {
    Solved solved = PoseSolver.solve(Poses.of(BRIDGE));
    MomentFacts down = solved.facts().keys().get(0);
    MomentFacts up = solved.facts().keys().get(1);
    System.out.println(
        hip(down, Side.LEFT)
            + " "
            + knee(down, Side.LEFT)
            + " "
            + shinTilt(solved.scene().keys().get(0).skeleton())
            + " up "
            + hip(up, Side.LEFT)
            + " "
            + knee(up, Side.LEFT)
            + " tilt "
            + tilt(up)
            + " "
            + shinTilt(solved.scene().keys().get(1).skeleton()));
    assertEquals(50, hip(down, Side.LEFT), WITHIN);
    assertEquals(109, knee(down, Side.LEFT), WITHIN);
    assertEquals(32, shinTilt(solved.scene().keys().get(0).skeleton()), WITHIN);
    assertEquals(0, hip(up, Side.LEFT), WITHIN);
    assertEquals(93, knee(up, Side.LEFT), WITHIN);
    assertEquals(-23, tilt(up), WITHIN);
    assertEquals(20, shinTilt(solved.scene().keys().get(1).skeleton()), WITHIN);
  }

  @ParameterizedTest
  @CsvSource({"45, 85, 95", "55, 71, 81"})
  void chair(int seat, double hip, double knee) {
    String chair =
        """
        pose: chair
        base: sitting
        supports: {chair: {height: %d}}
        contacts: [hips on chair, feet on floor]
        angles: {pelvis: tilt forward 0, lumbar: flexion 0, hip both: flexion 80, knee both: flexion 90}
        """;
    MomentFacts sits = keys(chair.formatted(seat)).get(0);
    System.out.println(hip(sits, Side.LEFT) + " " + knee(sits, Side.LEFT));
    assertEquals(hip, hip(sits, Side.LEFT), WITHIN);
    assertEquals(knee, knee(sits, Side.LEFT), WITHIN);
  }

  @Test
  void frontOfHipStretch() {
    String stretch =
        """
        pose: stretch
        base: half-kneeling
        supports: {mat: {}}
        contacts: [right knee on mat, right toes on mat, left foot on mat]
        angles: {hip right: extension 10, ankle right: plantarflexion 50, hip left: flexion 90, knee left: flexion 90}
        """;
    MomentFacts kneels = keys(stretch).get(0);
    System.out.println(
        knee(kneels, Side.RIGHT) + " " + hip(kneels, Side.LEFT) + " " + knee(kneels, Side.LEFT));
    assertEquals(80, knee(kneels, Side.RIGHT), WITHIN);
  }

  @Test
  void kneeToWall() {
    String wall =
        """
        pose: knee-to-wall
        base: standing
        supports: {wall: {distance: 10}}
        contacts: [feet on floor]
        angles: {hip left: extension 20}
        start: {hip right: flexion 18, knee right: flexion 20}
        end contacts: [right knee on wall]
        end: {hip right: flexion 15, knee right: flexion 45}
        """;
    for (MomentFacts m : keys(wall))
      System.out.println(
          m.worstMissCm()
              + " "
              + ankle(m, Side.RIGHT)
              + " "
              + hip(m, Side.RIGHT)
              + " "
              + knee(m, Side.RIGHT)
              + " | "
              + hip(m, Side.LEFT)
              + " "
              + knee(m, Side.LEFT)
              + " "
              + ankle(m, Side.LEFT));
    assertEquals(30, ankle(keys(wall).get(1), Side.RIGHT), WITHIN);
  }
}
