package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.body.BasePosture;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Movement;
import goniograph.figure.PoseTelling.Change;
import goniograph.figure.PoseTelling.Sides;
import goniograph.pose.Scene;
import java.util.List;
import org.junit.jupiter.api.Test;

class PoseTellingTest {
  @Test
  void tellsWhatMovesRoundedToFive() {
    PoseTelling telling = PoseTelling.of(Poses.armRaise(Poses.SIDE));
    assertEquals("standing", telling.base());
    Change first = telling.changes().get(0);
    assertEquals(
        List.of(Joint.SHOULDER, Sides.RIGHT, Movement.FLEXION, 0, 80),
        List.of(first.joint(), first.sides(), first.movement(), first.from(), first.to()));
  }

  @Test
  void tellsBothSidesInOne() {
    PoseTelling telling = PoseTelling.of(Poses.lean(Poses.SIDE));
    assertEquals(List.of("chair"), telling.supports());
    assertEquals(
        List.of(
            new Change(2, Joint.PELVIS, Sides.MIDLINE, Movement.TILT, -10, 30),
            new Change(2, Joint.HIP, Sides.BOTH, Movement.FLEXION, 75, 115)),
        telling.changes());
  }

  private static List<String> moves(Scene scene) {
    return PoseTelling.of(scene).panels().get(1).moves().stream()
        .map(move -> move.what() + " " + move.way() + " " + move.sides())
        .toList();
  }

  private static List<String> moves(JointAngles change) {
    JointAngles tall = BasePosture.STANDING.angles();
    return moves(
        Poses.moving(BasePosture.STANDING, tall, tall.over(change), .53, List.of(), Poses.SIDE));
  }

  @Test
  void hipAndKneeThatBendTogetherAreALegThatBends() {
    JointAngles squat =
        JointAngles.NONE
            .both(Joint.HIP, Movement.FLEXION, 60)
            .both(Joint.KNEE, Movement.FLEXION, 80);
    assertEquals(List.of("LEG_BEND MORE BOTH"), moves(squat));
  }

  @Test
  void headAndTrunkAreToldApart() {
    assertEquals(
        List.of("TRUNK_TURN BEYOND MIDLINE"),
        moves(JointAngles.NONE.with(Joint.THORACIC, Movement.TURN, -25)));
    assertEquals(
        List.of("HEAD_TURN MORE MIDLINE"),
        moves(JointAngles.NONE.with(Joint.NECK, Movement.TURN, 25)));
  }

  /** Neck and head turn against each other and the face stays level: no nod. */
  @Test
  void aDrawnInChinIsNoNod() {
    assertEquals(
        List.of("HEAD_TUCK MORE MIDLINE"),
        moves(JointAngles.NONE.with(Joint.HEAD, Movement.TUCK, 2.5)));
  }

  @Test
  void aHeadThatKeepsLookingAheadDoesNotNod() {
    assertEquals(
        List.of("TRUNK_LEAN MORE MIDLINE", "HIP_FLEXION MORE BOTH"),
        moves(
            JointAngles.NONE
                .with(Joint.PELVIS, Movement.TILT, 30)
                .both(Joint.HIP, Movement.FLEXION, 30)
                .with(Joint.NECK, Movement.FLEXION, -30)));
  }

  @Test
  void whereTheFreeHandIs() {
    HandPlace hand = PoseTelling.of(Poses.armRaise(Poses.SIDE)).panels().get(1).hands().get(0);
    assertEquals(
        new HandPlace(Sides.RIGHT, HandPlace.Height.SHOULDER, HandPlace.Reach.FRONT), hand);
  }
}
