package goniograph.body;

import static goniograph.body.Joint.ANKLE;
import static goniograph.body.Joint.ELBOW;
import static goniograph.body.Joint.FOREARM;
import static goniograph.body.Joint.HIP;
import static goniograph.body.Joint.KNEE;
import static goniograph.body.Joint.NECK;
import static goniograph.body.Joint.SHOULDER;
import static goniograph.body.Joint.WRIST;
import static goniograph.body.Movement.ABDUCTION;
import static goniograph.body.Movement.BEND;
import static goniograph.body.Movement.DORSIFLEXION;
import static goniograph.body.Movement.FLEXION;
import static goniograph.body.Movement.PRONATION;
import static goniograph.body.Movement.RADIAL;
import static goniograph.body.Movement.ROTATION;
import static goniograph.body.Movement.TURN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The tables of range of motion against the publications they name. */
class RangeOfMotionTest {

  /** Norkin and White, Measurement of Joint Motion, table A.1, column of the AAOS. */
  @Test
  void adultArmsHaveTheRangesOfTheAmericanAcademy() {
    range(AgeGroup.ADULT, SHOULDER, FLEXION, -60, 180);
    range(AgeGroup.ADULT, SHOULDER, ROTATION, -70, 90);
    range(AgeGroup.ADULT, ELBOW, FLEXION, 0, 150);
    range(AgeGroup.ADULT, FOREARM, PRONATION, -80, 80);
    range(AgeGroup.ADULT, WRIST, FLEXION, -70, 80);
    range(AgeGroup.ADULT, WRIST, RADIAL, -30, 20);
    assertEquals(180, norm(AgeGroup.ADULT, SHOULDER, ABDUCTION).high());
  }

  /** AAOS for the leg: from memory, not checked. */
  @Test
  void adultLegsHaveTheRememberedRanges() {
    assertEquals(120, norm(AgeGroup.ADULT, HIP, FLEXION).high());
    range(AgeGroup.ADULT, HIP, ABDUCTION, -30, 45);
    range(AgeGroup.ADULT, HIP, ROTATION, -45, 45);
    range(AgeGroup.ADULT, KNEE, FLEXION, 0, 135);
    range(AgeGroup.ADULT, ANKLE, DORSIFLEXION, -50, 20);
  }

  /** Norkin and White, table A.1, column of Walker, 65 to 85 years. */
  @Test
  void olderArmsHaveWalkersRanges() {
    range(AgeGroup.OLDER, SHOULDER, FLEXION, -44, 165);
    range(AgeGroup.OLDER, SHOULDER, ROTATION, -62, 81);
    range(AgeGroup.OLDER, ELBOW, FLEXION, 0, 143);
    range(AgeGroup.OLDER, FOREARM, PRONATION, -74, 71);
    range(AgeGroup.OLDER, WRIST, FLEXION, -63, 64);
    range(AgeGroup.OLDER, WRIST, RADIAL, -26, 19);
  }

  /** PMC5144495, table 3, older women: hip 122.6 and 16.8, knee 127.6, dorsiflexion 17.7. */
  @Test
  void olderLegsHaveTheMeansOfOlderWomen() {
    range(AgeGroup.OLDER, HIP, FLEXION, -16.8, 122.6);
    range(AgeGroup.OLDER, KNEE, FLEXION, 0, 127.6);
    assertEquals(17.7, norm(AgeGroup.OLDER, ANKLE, DORSIFLEXION).high());
  }

  /**
   * Soucie 2011, Haemophilia 17:500, girls of 2 to 8: hip 140.8, knee 152.6, dorsiflexion 24.8; the
   * first two end at our hard limits.
   */
  @Test
  void childrenBendFurtherThanAdults() {
    assertEquals(24.8, norm(AgeGroup.CHILD, ANKLE, DORSIFLEXION).high());
    assertEquals(Math.min(140.8, 125), norm(AgeGroup.CHILD, HIP, FLEXION).high());
    assertEquals(Math.min(152.6, 140), norm(AgeGroup.CHILD, KNEE, FLEXION).high());
    assertEquals(norm(AgeGroup.ADULT, ELBOW, FLEXION), norm(AgeGroup.CHILD, ELBOW, FLEXION));
  }

  /**
   * Vasavada, Li and Delp 1998, Spine 23:412, table 2, total ranges: flexion and extension 40
   * (skull to C2) and 82 (C2 to T1), bending 13 and 67, turning 77 and 55.
   */
  @Test
  void neckAndHeadTogetherHaveThePublishedTotals() {
    assertEquals(82, width(NECK, FLEXION), 1e-9);
    assertEquals(40, width(Joint.HEAD, FLEXION), 1e-9);
    assertEquals(122, width(NECK, FLEXION) + width(Joint.HEAD, FLEXION), 1e-9);
    assertEquals(67 + 13, width(NECK, BEND) + width(Joint.HEAD, BEND), 1e-9);
    assertEquals(55 + 77, width(NECK, TURN) + width(Joint.HEAD, TURN), 1e-9);
  }

  /** The house's hard limits for hip, knee, elbow and ankle: common practice, no source. */
  @Test
  void aFootThatBearsWeightBendsFurther() {
    Freedom ankle = Freedom.of(ANKLE, Side.LEFT, DORSIFLEXION);
    assertEquals(25, RangeOfMotion.hard(ankle, false).orElseThrow().high());
    assertEquals(45, RangeOfMotion.hard(ankle, true).orElseThrow().high());
    assertTrue(RangeOfMotion.norm(ankle, AgeGroup.ADULT, true).isEmpty());
    assertEquals(125, hard(HIP, FLEXION).high());
    assertEquals(140, hard(KNEE, FLEXION).high());
    assertEquals(150, hard(ELBOW, FLEXION).high());
  }

  @Test
  void everyNormLiesWithinItsHardLimitsAndNamesItsSource() {
    for (Freedom freedom : Freedom.all()) {
      for (AgeGroup age : AgeGroup.values()) {
        RangeOfMotion.norm(freedom, age, false)
            .ifPresent(
                norm -> {
                  MotionRange hard = RangeOfMotion.hard(freedom, false).orElseThrow();
                  assertTrue(norm.low() < norm.high(), freedom + " " + age);
                  assertTrue(
                      hard.holds(norm.low()) && hard.holds(norm.high()), freedom + " " + age);
                  assertFalse(norm.source().isBlank(), freedom + " " + age);
                });
      }
    }
  }

  @Test
  void theEndsOfARangeBelongToIt() {
    MotionRange knee = new MotionRange(0, 135, "test");
    assertTrue(knee.holds(0) && knee.holds(135));
    assertFalse(knee.holds(135.01) || knee.holds(-.01));
  }

  private static void range(AgeGroup age, Joint joint, Movement movement, double low, double high) {
    MotionRange norm = norm(age, joint, movement);
    assertEquals(low, norm.low(), joint + " " + movement);
    assertEquals(high, norm.high(), joint + " " + movement);
  }

  private static MotionRange norm(AgeGroup age, Joint joint, Movement movement) {
    return RangeOfMotion.norm(freedom(joint, movement), age, false).orElseThrow();
  }

  private static MotionRange hard(Joint joint, Movement movement) {
    return RangeOfMotion.hard(freedom(joint, movement), false).orElseThrow();
  }

  private static double width(Joint joint, Movement movement) {
    MotionRange norm = norm(AgeGroup.ADULT, joint, movement);
    return norm.high() - norm.low();
  }

  private static Freedom freedom(Joint joint, Movement movement) {
    return joint.paired() ? Freedom.of(joint, Side.RIGHT, movement) : Freedom.of(joint, movement);
  }
}
