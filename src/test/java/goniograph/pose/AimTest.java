package goniograph.pose;

import static goniograph.body.Movement.FLEXION;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import goniograph.finding.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Segments laid in the world, measured between joints of the solved body. */
class AimTest {
  private static final double DEGREE = Math.toRadians(1);

  private static Solved solved(String base, String angles) {
    return PoseSolver.solve(Poses.of(text(base, angles)));
  }

  private static String text(String base, String angles) {
    return "pose: t\nbase: " + base + "\nsupports: {wall: {}}\nangles: {" + angles + "}\n";
  }

  private static Skeleton body(String base, String angles) {
    return solved(base, angles).scene().keys().get(0).skeleton();
  }

  private static Vec way(Vec from, Vec to) {
    return to.minus(from).unit();
  }

  private static Vec thigh(Skeleton s, Side side) {
    return way(Landmarks.hip(s, side), Landmarks.knee(s, side));
  }

  private static Vec forearm(Skeleton s, Side side) {
    return way(Landmarks.elbow(s, side), Landmarks.wrist(s, side));
  }

  private static void assertPoints(Vec expected, Vec actual) {
    assertEquals(0, actual.minus(expected).length(), DEGREE);
  }

  /** A thigh level under an upright pelvis is a hip at a right angle: plane geometry. */
  @Test
  void aLevelThighOfAnUprightBodyIsAHipAtNinety() {
    Solved solved = solved("standing", "thigh left: level");
    double hip =
        solved.facts().keys().get(0).angles().get(Freedom.of(Joint.HIP, Side.LEFT, FLEXION));
    assertEquals(90, hip, 1);
  }

  @Test
  void theTiltOfThePelvisIsTakenIntoAccount() {
    Skeleton s =
        body("standing", "pelvis: tilt forward 35, thigh left: level, shank left: upright");
    assertEquals(0, thigh(s, Side.LEFT).y(), DEGREE);
    assertPoints(
        new Vec(0, -1, 0), way(Landmarks.knee(s, Side.LEFT), Landmarks.ankle(s, Side.LEFT)));
  }

  @Test
  void armsOfAGoalpost() {
    Skeleton s =
        body(
            "standing",
            "shoulder both: abduction 80, upper arm both: level, forearm both: upright");
    for (Side side : Side.values()) {
      Vec upper = way(Landmarks.shoulder(s, side), Landmarks.elbow(s, side));
      assertEquals(0, upper.y(), DEGREE);
      assertTrue(side.sign() * upper.z() > .95);
      assertPoints(new Vec(0, 1, 0), forearm(s, side));
    }
  }

  @Test
  void aHangingArmGoesLevelToTheFront() {
    Skeleton s = body("standing", "upper arm right: level");
    assertTrue(way(Landmarks.shoulder(s, Side.RIGHT), Landmarks.elbow(s, Side.RIGHT)).x() > .95);
  }

  @Test
  void directionsOfTheRoom() {
    Skeleton s =
        body(
            "standing",
            "forearm left: pointing at ceiling, foot right: pointing at floor,"
                + " head: pointing at left");
    assertPoints(new Vec(0, 1, 0), forearm(s, Side.LEFT));
    assertTrue(way(Landmarks.heel(s, Side.RIGHT), Landmarks.toe(s, Side.RIGHT)).y() < -.5);
  }

  @Test
  void aThingInThePoseIsPointedAt() {
    Skeleton s = body("standing", "forearm left: pointing at wall");
    assertPoints(new Vec(1, 0, 0), forearm(s, Side.LEFT));
  }

  @Test
  void trunkAndHead() {
    Skeleton s =
        body("standing", "trunk: upright, lumbar: flexion 20, neck: flexion 25, head: level");
    assertEquals(1, s.spine(SpineJoint.T5).axes().y().y(), .001);
    assertEquals(0, s.spine(SpineJoint.C0).axes().x().y(), DEGREE);
  }

  /** On hands and knees the contacts turn the body after the angles are typed. */
  @Test
  void contactsThatTurnTheBodyAreTakenIntoAccount() {
    Solved solved =
        PoseSolver.solve(
            Poses.of(
                "pose: t\nbase: hands-and-knees\nsupports: {mat: {}}\n"
                    + "contacts: [left knee on mat, right hand on mat]\n"
                    + "start contacts: [right knee on mat, left hand on mat]\n"
                    + "start: {}\nend: {thigh right: pointing at back, knee right: flexion 0}\n"));
    Skeleton s = solved.scene().keys().get(1).skeleton();
    assertPoints(new Vec(-1, 0, 0), thigh(s, Side.RIGHT));
  }

  @Test
  void theOtherSideIsTheMirrorImage() {
    String text = text("standing", "thigh left: level, forearm right: pointing at left");
    PoseFile pose = Poses.of(text);
    Skeleton right = PoseSolver.solve(pose).scene().keys().get(0).skeleton();
    Skeleton left = PoseSolver.solve(pose.mirrored()).scene().keys().get(0).skeleton();
    for (Side side : Side.values()) {
      Vec a = Landmarks.wrist(right, side);
      Vec b = Landmarks.wrist(left, side.other());
      assertEquals(0, b.minus(new Vec(a.x(), a.y(), -a.z())).length(), .002);
    }
  }

  @Test
  void whatAFrameTypesHidesTheWishOfThePose() {
    PoseFile pose =
        Poses.of(
            "pose: t\nbase: standing\nangles: {thigh left: level}\n"
                + "start: {}\nend: {hip left: flexion 20}\n");
    Solved solved = PoseSolver.solve(pose);
    assertEquals(0, thigh(solved.scene().keys().get(0).skeleton(), Side.LEFT).y(), DEGREE);
    double end =
        solved.facts().keys().get(1).angles().get(Freedom.of(Joint.HIP, Side.LEFT, FLEXION));
    assertEquals(20, end, .5);
  }

  @Test
  void whatCannotBeUnderstoodHasItsPlaceAndItsNearest() {
    assertFound("thigh left: levl", "4:22 pose-aim-unknown", "Write `level`.");
    assertFound("thigh left: flexion 60", "4:22 pose-aim-unknown", "Known here");
    assertFound("knee left: level", "4:21 pose-aim-joint", "Write `shank …: level`");
    assertFound("foot left: pointing at wal", "4:33 pose-aim-target", "Write `wall`.");
    assertFound("thigh: level", "4:10 pose-joint-side", "Write `thigh left`");
    assertFound("tigh left: level", "4:10 pose-joint-unknown", "Write `thigh`.");
  }

  @Test
  void anAngleAndAWishForOneJointAreAConflict() {
    Finding found =
        Poses.findings(text("standing", "knee left: flexion 30, shank left: upright")).get(0);
    assertEquals("pose-aim-conflict", found.rule());
    assertTrue(found.what().contains("`knee left: flexion` types in line 4"), found.what());
  }

  private static void assertFound(String angles, String where, String mend) {
    List<Finding> found = Poses.findings(text("standing", angles));
    assertEquals(1, found.size(), angles);
    Finding one = found.get(0);
    assertEquals(where, one.at().line() + ":" + one.at().column() + " " + one.rule());
    assertTrue(one.mend().startsWith(mend), one.mend());
  }
}
