package goniograph.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Statics.Force;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Joint loads against published worked examples; g = 9.81 here, 9.8 in the books. */
class StaticsTest {
  private static final double BOOKS = 9.8 / Statics.GRAVITY;

  private static Vec at(double distance, double degreesAboveHorizontal) {
    double a = Math.toRadians(degreesAboveHorizontal);
    return new Vec(distance * Math.cos(a), distance * Math.sin(a), 0);
  }

  private static double load(Vec about, Force... forces) {
    return Math.abs(Statics.moment(about, List.of(forces)).z());
  }

  @Test
  void headHeldByTheNeck() {
    // Young and Freedman, University Physics 13e, example 11.23: head 4.50 kg, centre 11.0 cm from
    // the pivot, 40 degrees from vertical, muscle arm 1.50 cm: 207.9 N (answer computed).
    double moment = load(Vec.ZERO, Force.weight(at(.110, 50), 4.50 * BOOKS));
    assertEquals(207.9, Statics.muscleForce(moment, .0150), .1);
  }

  @Test
  void outstretchedArm() {
    // Giancoli, Physics 7e, chapter 9, problem 34: 3.3 kg at 24 cm, deltoid at 12 cm and 15
    // degrees: muscle 250 N, joint 240 N at 7.6 degrees below the horizontal.
    Force weight = Force.weight(at(.24, 0), 3.3 * BOOKS);
    Force unit = new Force(at(.12, 0), at(-1, -15));
    double muscle = load(Vec.ZERO, weight) / load(Vec.ZERO, unit);
    assertEquals(249.9, muscle, .2);
    Vec joint = unit.newton().times(muscle).plus(weight.newton()).times(-1);
    assertEquals(243.5, joint.length(), .3);
    assertEquals(7.63, Math.abs(Math.toDegrees(Math.atan(joint.y() / joint.x()))), .05);
  }

  @Test
  void armHeldOutWithTwoWeights() {
    // Giancoli 9.37: F sin 105 x .05 = 2 g x .15 + 25 g x .35: about 1800 N (1836).
    double moment =
        load(Vec.ZERO, Force.weight(at(.15, 0), 2 * BOOKS), Force.weight(at(.35, 0), 25 * BOOKS));
    double lever = .05 * Math.sin(Math.toRadians(105));
    assertEquals(1836, Statics.muscleForce(moment, lever), 1);
  }

  @Test
  void tricepsAgainstALoad() {
    // Worked example after Hall, Basic Biomechanics: 200 N at 25 cm, muscle arm 2 cm: 2500 N.
    double moment = load(Vec.ZERO, new Force(at(.25, 0), new Vec(0, 200, 0)));
    assertEquals(2500, Statics.muscleForce(moment, .02), 1e-6);
  }

  @Test
  void aSlantedForceActsWithItsPerpendicularPart() {
    // Same source: 50 cm x sin 60 = 43.3 cm; 500 N at 15 degrees = 129.4 N and 483.0 N.
    double unit = load(Vec.ZERO, new Force(at(.5, 0), at(1, 60)));
    assertEquals(.433, unit, 5e-4);
    double slanted = load(Vec.ZERO, new Force(at(1, 0), at(500, 15)));
    assertEquals(129.4, slanted, .05);
  }

  @Test
  void threeForcesInBalanceMeetNoMoment() {
    // After Ozkaya and Nordin, Fundamentals of Biomechanics, example 4.6 (values computed): head 50
    // N, muscle 50 N at 30 degrees, joint 86.6 N at 60: together no force, and about no point a
    // moment, since they meet in one point.
    Vec meeting = new Vec(.1, .2, 0);
    Vec muscle = at(-50, 30);
    Vec joint = at(86.6, 60);
    Vec weight = new Vec(0, -50, 0);
    assertEquals(0, muscle.plus(joint).plus(weight).length(), .02);
    for (Vec about : List.of(Vec.ZERO, new Vec(1, 0, 0), new Vec(-.3, .7, 0))) {
      List<Force> forces =
          List.of(
              new Force(meeting, muscle), new Force(meeting, joint), new Force(meeting, weight));
      assertEquals(0, Statics.moment(about, forces).z(), .02);
    }
  }

  @Test
  void forearmWithABook() {
    // OpenStax, College Physics (CC BY 4.0), chapter 9 (inputs from memory, computed): biceps 4.0
    // cm, forearm 2.5 kg at 16 cm, book 4.0 kg at 38 cm: 470 N, 7.38 times the weight.
    double moment =
        load(Vec.ZERO, Force.weight(at(.16, 0), 2.5 * BOOKS), Force.weight(at(.38, 0), 4 * BOOKS));
    double biceps = Statics.muscleForce(moment, .04);
    assertEquals(470.4, biceps, .1);
    assertEquals(7.385, biceps / (6.5 * 9.8), .001);
  }

  /** A body whose head and neck weigh this much, in N, this far from C7, in m. */
  private static Body headed(double newton, double metres) {
    double distance = Landmarks.ears(head(0)).minus(head(0).spine(SpineJoint.C7).origin()).length();
    double mass = newton / Statics.GRAVITY / SegmentMass.HEAD_AND_NECK.mass();
    return new Body(100 * metres / distance, mass);
  }

  /** That body tilted until the line from C7 to its head's centre leans so far. */
  private static Skeleton leaning(Body body, double degrees) {
    Vec line = Landmarks.ears(head(0)).minus(head(0).spine(SpineJoint.C7).origin());
    double upright = Math.toDegrees(Math.atan2(line.x(), line.y()));
    JointAngles tilt = JointAngles.NONE.with(Joint.PELVIS, Movement.TILT, degrees - upright);
    return Kinematics.skeleton(body, Turn.NONE, tilt, Vec.ZERO);
  }

  @Test
  void theBookHeadsOnOurBody() {
    // Young and Freedman, example 11.23, as above: 4.50 kg, 11.0 cm, 40 degrees, 1.50 cm: 207.9 N.
    double moment = JointLoad.neck(leaning(headed(4.50 * 9.8, .110), 40));
    assertEquals(207.9, Statics.muscleForce(moment, .0150), .1);
    // OpenStax, head on the neck (inputs from memory): 50 N 2.5 cm ahead, muscle 5.0 cm behind:
    // muscle 25 N, joint 75 N.
    double ahead = Math.toDegrees(Math.asin(.025 / .110));
    double muscle = Statics.muscleForce(JointLoad.neck(leaning(headed(50, .110), ahead)), .050);
    assertEquals(25, muscle, .01);
    assertEquals(75, muscle + 50, .01);
  }

  @Test
  void theOutstretchedArmOnOurBody() {
    // Giancoli, chapter 9, problem 34, as above: 3.3 kg, centre 24 cm from the shoulder, deltoid
    // at 12 cm and 15 degrees: 250 N.
    JointAngles sideways = JointAngles.NONE.both(Joint.SHOULDER, Movement.ABDUCTION, 90);
    double armShare = .028 + .016 + .006;
    double mass = 3.3 * BOOKS / armShare;
    Skeleton unscaled = Kinematics.skeleton(new Body(100, mass), Turn.NONE, sideways, Vec.ZERO);
    double centre = JointLoad.shoulder(unscaled, Side.RIGHT, 0) / (3.3 * BOOKS * Statics.GRAVITY);
    Body body = new Body(100 * .24 / centre, mass);
    Skeleton s = Kinematics.skeleton(body, Turn.NONE, sideways, Vec.ZERO);
    double lever = .12 * Math.sin(Math.toRadians(15));
    assertEquals(249.9, Statics.muscleForce(JointLoad.shoulder(s, Side.RIGHT, 0), lever), .2);
  }

  @Test
  void theNecksOfOurBodyFollowThePublishedSeries() {
    // Hansraj 2014, Surg Technol Int 25:277, as below, on the whole body leaning: within 10 % at
    // the
    // stated lever arm of 3.8 cm.
    double[][] published = {{15, 27}, {30, 40}, {45, 49}, {60, 60}};
    for (double[] row : published) {
      double moment = JointLoad.neck(leaning(headed(60, .16), row[0]));
      double along = 60 * Math.cos(Math.toRadians(row[0]));
      double pounds = (Statics.muscleForce(moment, JointLoad.NECK_LEVER_ARM) + along) / 4.4482216;
      assertEquals(row[1], pounds, .10 * row[1]);
    }
  }

  @Test
  void armHeldForward() {
    // From Winter's table for 70 kg and 1.75 m, segments summed: 10.30 Nm; his single row for the
    // whole arm gives 10.57. Ours takes the hand at the palm.
    Body body = new Body(175, 70);
    JointAngles forward = JointAngles.NONE.both(Joint.SHOULDER, Movement.FLEXION, 90);
    Skeleton s = Kinematics.skeleton(body, Turn.NONE, forward, Vec.ZERO);
    assertEquals(10.30, JointLoad.shoulder(s, Side.RIGHT, 0), .026 * 10.30);
    // half a kilogram in the hand adds its weight at the palm
    double reach = (Lengths.UPPER_ARM + Lengths.FOREARM + Lengths.PALM) * 1.75;
    assertEquals(
        JointLoad.shoulder(s, Side.RIGHT, 0) + .5 * Statics.GRAVITY * reach,
        JointLoad.shoulder(s, Side.RIGHT, .5),
        1e-9);
  }

  @Test
  void neckMuscleForceByOneMuscleFollowsThePublishedSeries() {
    // Hansraj 2014, Surg Technol Int 25:277: head 60 N, 16 cm above C7; 27, 40, 49, 60 lb at 15,
    // 30, 45, 60 degrees; reproduced within 10 % with the stated lever arm of 3.8 cm.
    double[][] published = {{15, 27}, {30, 40}, {45, 49}, {60, 60}};
    for (double[] row : published) {
      Vec centre = at(.16, 90 - row[0]);
      double muscle =
          Statics.muscleForce(
              load(Vec.ZERO, new Force(centre, new Vec(0, -60, 0))), JointLoad.NECK_LEVER_ARM);
      double pounds = (muscle + 60 * Math.cos(Math.toRadians(row[0]))) / 4.4482216;
      assertEquals(row[1], pounds, .10 * row[1]);
    }
  }

  @Test
  void neckLoadGrowsWhenTheHeadPokesForward() {
    double tall = JointLoad.neck(head(0));
    assertTrue(JointLoad.neck(head(-3)) > 1.3 * tall, "poked");
    assertTrue(JointLoad.neck(head(2.5)) < .8 * tall, "tucked");
    // Upright head and neck of 5.67 kg (8.1 % of 70 kg) about C7: 2 to 4 Nm, by hand 3.4.
    assertEquals(5.67 * Statics.GRAVITY * .036 * 1.70, tall, .1);
  }

  @Test
  void aLegStraightOutAndABentTrunkLoadTheirJoints() {
    JointAngles sitting =
        JointAngles.NONE.both(Joint.HIP, Movement.FLEXION, 90).with(Joint.PELVIS, Movement.TILT, 0);
    Skeleton s = Kinematics.skeleton(Body.ADULT, Turn.NONE, sitting, Vec.ZERO);
    // Winter: foot+leg .061 at .606 of the shank: about 10.6 Nm for 70 kg and 1.70 m.
    double published = .061 * 70 * Statics.GRAVITY * .606 * Lengths.SHANK * 1.70;
    assertEquals(published, JointLoad.knee(s, Side.LEFT), .04 * published);
    assertTrue(JointLoad.hip(s, Side.LEFT) > JointLoad.knee(s, Side.LEFT));
    JointAngles bent =
        JointAngles.NONE
            .with(Joint.PELVIS, Movement.TILT, 60)
            .both(Joint.SHOULDER, Movement.FLEXION, 60);
    Skeleton stooped = Kinematics.skeleton(Body.ADULT, Turn.NONE, bent, Vec.ZERO);
    assertTrue(JointLoad.lowBack(stooped, 0) > 5 * Math.abs(JointLoad.lowBack(head(0), 0)));
    assertTrue(JointLoad.lowBack(stooped, 2) > JointLoad.lowBack(stooped, 0));
  }

  private static Skeleton head(double tuckCm) {
    JointAngles angles = JointAngles.NONE.with(Joint.HEAD, Movement.TUCK, tuckCm);
    return Kinematics.skeleton(Body.ADULT, Turn.NONE, angles, Vec.ZERO);
  }
}
