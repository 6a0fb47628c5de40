package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.AgeGroup;
import goniograph.body.Joint;
import goniograph.body.Movement;
import goniograph.body.Side;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Facts against what was measured when the method was tried, for a person of 170 cm and 70 kg. */
class SceneFactsTest {

  private static MomentFacts trial(String id, int key) {
    return PoseSolver.solve(Poses.trial(id)).facts().keys().get(key);
  }

  @Test
  void balanceMargins() {
    // Trial values: sitting 14.8, mid sit-to-stand -5.1 and +3.3, turned 11 to 15, reach to the
    // floor 1.5, one-leg stand 0.1 without the hand; our pelvis is an ellipsoid, hence 1 to 3 cm.
    assertEquals(14.8, trial("a-sit-tall", 0).marginCm().orElseThrow(), 1);
    assertEquals(-5.1, trial("f-sit-to-stand", 0).marginCm().orElseThrow(), 1);
    assertEquals(3.3, trial("f-sit-to-stand", 1).marginCm().orElseThrow(), 1);
    assertEquals(1.5, trial("u-reach-floor", 0).marginCm().orElseThrow(), 1);
    MomentFacts oneLeg = trial("i-one-leg-stand", 0);
    assertEquals(.1, oneLeg.marginWithoutHandsCm().orElseThrow(), 1);
    assertTrue(oneLeg.marginCm().orElseThrow() > 5);
  }

  @Test
  void oneFootAndRaisedHeels() {
    SceneFacts oneLeg = PoseSolver.solve(Poses.trial("i-one-leg-stand")).facts();
    assertTrue(oneLeg.standsOnOneFoot());
    assertEquals(FootState.OFF, oneLeg.keys().get(0).feet().get(Side.LEFT));
    assertFalse(PoseSolver.solve(Poses.trial("o-standing")).facts().standsOnOneFoot());
    SceneFacts raise =
        PoseSolver.solve(
                Poses.of(
                    """
                    pose: heel-raise
                    base: standing
                    start contacts: [feet on floor]
                    end contacts: [toes on floor]
                    start: {}
                    end: {ankle both: plantarflexion 30}
                    """))
            .facts();
    assertTrue(raise.raisesHeels());
    assertEquals(FootState.HEEL_RAISED, raise.keys().get(1).feet().get(Side.LEFT));
    assertEquals(
        -30, raise.keys().get(1).angles().get(Joint.ANKLE, Side.LEFT, Movement.DORSIFLEXION), 1);
    assertEquals(0, raise.keys().get(1).worstMissCm(), .5);
  }

  @Test
  void craniovertebralAngleAndNeckLoadOfATuckedChin() {
    // Trial values: 39.9 poked by 3 cm, 62.1 tucked by 2.5 cm; 5.1 and 2.0 Nm.
    MomentFacts poked = trial("b-chin-tuck", 0);
    MomentFacts tucked = trial("b-chin-tuck", 1);
    assertEquals(39.9, poked.craniovertebralDegrees(), .1);
    assertEquals(62.1, tucked.craniovertebralDegrees(), .1);
    assertEquals(5.1, poked.loads().neck().orElseThrow(), .1);
    assertEquals(2.0, tucked.loads().neck().orElseThrow(), .1);
  }

  @Test
  void jointsWhoseLimbTouchesHaveNoLoad() {
    Loads loads = trial("i-one-leg-stand", 0).loads();
    assertEquals(Optional.empty(), loads.lowBack(), "the hand on the counter carries");
    assertTrue(loads.hip().containsKey(Side.LEFT) && !loads.hip().containsKey(Side.RIGHT));
    assertTrue(loads.shoulder().containsKey(Side.RIGHT));
    assertFalse(loads.shoulder().containsKey(Side.LEFT));
  }

  @Test
  void typedAnglesThatContactsChangeAreToldWithBothNumbers() {
    SceneFacts facts =
        PoseSolver.solve(
                Poses.of(
                    """
                    pose: crouch
                    base: sitting
                    supports: {chair: {height: 60}}
                    contacts: [hips on chair, feet on floor]
                    angles: {hip both: flexion 90, knee both: flexion 90, pelvis: tilt back 0}
                    """))
            .facts();
    TypedDifference hip =
        facts.differences().stream()
            .filter(d -> d.freedom().joint() == Joint.HIP)
            .findFirst()
            .orElseThrow();
    assertEquals(90, hip.typed());
    assertTrue(hip.solved() < 75, "a high seat opens the hip: " + hip.solved());
    assertTrue(hip.explained(), "the foot's contact explains it");
    assertEquals(5, hip.at().line());
    assertEquals(20, hip.at().column());
  }

  @Test
  void rangesThatAreLeftAreNamedWithTheirFarthestValue() {
    SceneFacts facts =
        PoseSolver.solve(
                Poses.of(
                    """
                    pose: far
                    base: standing
                    contacts: [left foot on floor]
                    start: {hip right: flexion 0, shoulder left: flexion 0}
                    end: {hip right: flexion 130, knee right: flexion 90, shoulder left: flexion 170}
                    """))
            .facts();
    List<RangeBreach> adult = facts.breaches(AgeGroup.ADULT);
    assertEquals(1, adult.size(), adult.toString());
    assertTrue(adult.get(0).hard());
    assertEquals(130, adult.get(0).value(), 1e-6);
    assertEquals("end", adult.get(0).frame());
    List<RangeBreach> older = facts.breaches(AgeGroup.OLDER);
    assertEquals(2, older.size(), "165 is the norm of 65 to 85 years (Walker)");
    assertEquals(130, facts.hipFlexionMax(), 1e-6);
  }

  @Test
  void anAnkleThatBearsMayBendFarther() {
    String pose =
        """
        pose: squat
        base: standing
        contacts: [%s]
        angles: {hip right: flexion 60, hip left: flexion 90, knee both: flexion 90, ankle both: dorsiflexion 30}
        """;
    assertFalse(ankleBreaks(pose.formatted("feet on floor")));
    assertTrue(
        ankleBreaks(pose.formatted("right foot on floor")), "25 degrees for the leg in the air");
  }

  private static boolean ankleBreaks(String yaml) {
    return PoseSolver.solve(Poses.of(yaml)).facts().breaches(AgeGroup.ADULT).stream()
        .anyMatch(b -> b.freedom().joint() == Joint.ANKLE && b.hard());
  }

  @Test
  void supportDistancesAreMeasuredFromTheOutlineOfTrunkAndLegs() {
    for (double distance : List.of(5.0, 30.0)) {
      SceneFacts facts =
          PoseSolver.solve(
                  Poses.of(
                      """
                      pose: beside
                      base: standing
                      supports: {counter: {side: right, distance: %s}}
                      contacts: [feet on floor]
                      """
                          .formatted(distance)))
              .facts();
      assertEquals(distance, facts.distanceCm("counter").orElseThrow(), 1e-6);
    }
  }

  @Test
  void aBodyOnOneLegShiftsUntilItIsBalanced() {
    String pose =
        """
        pose: one-leg
        base: standing
        contacts: [right foot on floor]
        angles: {hip left: flexion 60, knee left: flexion 84}
        """;
    double loose = PoseSolver.solve(Poses.of(pose)).facts().marginCm(true).orElseThrow();
    double shifted =
        PoseSolver.solve(Poses.of(pose + "balance: auto\n")).facts().marginCm(true).orElseThrow();
    assertTrue(loose < 2.5, "without a shift " + loose);
    assertTrue(shifted > loose && shifted > 2, "shifted " + shifted);
  }
}
