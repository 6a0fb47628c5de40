package goniograph.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Masses and centres against the published tables. Winter = Biomechanics and Motor Control of Human
 * Movement, 4th ed. 2009, table 4.1 (after Dempster 1955) and figure 4.1 (after Drillis and Contini
 * 1966); de Leva = J Biomech 1996, 29:1223, table 4, as transcribed openly.
 */
class MassesTest {
  private static final Skeleton STANDING =
      Kinematics.skeleton(Body.ADULT, Turn.NONE, JointAngles.NONE, new Vec(0, Lengths.HIP, 0));

  private static double whole() {
    return MassPoint.of(STANDING).stream().mapToDouble(p -> p.segment().mass()).sum();
  }

  @Test
  void segmentsSumToTheWholeBody() {
    assertEquals(1.000, whole(), 1e-12);
  }

  @Test
  void combinedSegmentsOfWintersTableFollowFromTheSingleOnes() {
    // Rows of the same table that we do not use, as a second method: total arm .050, forearm+hand
    // .022, foot+leg .061, total leg .161, trunk .497, HAT .678.
    double arm = mass(SegmentMass.UPPER_ARM, SegmentMass.FOREARM, SegmentMass.HAND);
    double leg = mass(SegmentMass.THIGH, SegmentMass.SHANK, SegmentMass.FOOT);
    double trunk = mass(SegmentMass.THORAX, SegmentMass.ABDOMEN, SegmentMass.PELVIS);
    assertEquals(.050, arm, 1e-9);
    assertEquals(.022, mass(SegmentMass.FOREARM, SegmentMass.HAND), 1e-9);
    assertEquals(.061, mass(SegmentMass.SHANK, SegmentMass.FOOT), 1e-9);
    assertEquals(.161, leg, 1e-9);
    assertEquals(.497, trunk, 1e-9);
    assertEquals(.678, trunk + SegmentMass.HEAD_AND_NECK.mass() + 2 * arm, 1e-9);
  }

  @Test
  void combinedCentresOfTheLegFollowFromTheSingleOnes() {
    // Winter: foot+leg CMp .606 of the shank, total leg CMp .447 from hip to ankle.
    double thigh = Lengths.THIGH;
    double shank = Lengths.SHANK;
    double foot = SegmentMass.FOOT.mass();
    double leg = SegmentMass.SHANK.mass();
    double belowKnee =
        (leg * SegmentMass.SHANK.centre() * shank + foot * (shank + .5 * Lengths.ANKLE))
            / (leg + foot);
    assertEquals(.606, belowKnee / shank, .02);
    double all =
        (SegmentMass.THIGH.mass() * SegmentMass.THIGH.centre() * thigh
                + (leg + foot) * (thigh + belowKnee))
            / (SegmentMass.THIGH.mass() + leg + foot);
    assertEquals(.447, all / (thigh + shank), .02);
  }

  @Test
  void lengthsCloseOnTheLandmarkHeights() {
    // Winter, figure 4.1: hip .530, knee .285, ankle .039, elbow .630, wrist .485, fingertip .377.
    assertEquals(.530 - .285, Lengths.THIGH, 1e-9);
    assertEquals(.285 - .039, Lengths.SHANK, 1e-9);
    assertEquals(.485 - .377, Lengths.HAND, 1e-9);
    assertEquals(.630 - .485, Lengths.FOREARM, .0011);
    assertEquals(.818 - .630, Lengths.UPPER_ARM, .0021); // known gap of the figure
    assertEquals(.259, 2 * Lengths.HALF_BIACROMIAL, 1e-9);
    assertEquals(.152, Lengths.HEEL + Lengths.TOE, 1e-9);
  }

  @Test
  void limbLengthsAgreeWithDeLevaWithinSampleDifferences() {
    // de Leva's lengths over stature 1741 mm (men; the stature is from memory). Upper arm, forearm
    // and thigh differ by how the joint centres were found; shank and foot agree within 3 %.
    Map<Limb, Double> men =
        Map.of(
            Limb.UPPER_ARM,
            .1618,
            Limb.FOREARM,
            .1545,
            Limb.THIGH,
            .2425,
            Limb.SHANK,
            .2493,
            Limb.FOOT,
            .1482);
    men.forEach((limb, length) -> assertEquals(length, Lengths.of(limb), .16 * length));
    assertEquals(.2493, Lengths.SHANK, .03 * .2493);
    assertEquals(.2425, Lengths.THIGH, .03 * .2425);
    assertEquals(.1482, Lengths.FOOT, .03 * .1482);
  }

  @Test
  void centreOfMassOfTheDrawnBody() {
    // The house's own placement: .570; textbooks give .55 to .57 of stature (from memory).
    double y = MassPoint.centreOfMass(MassPoint.of(STANDING)).y();
    assertEquals(.570, y, .010);
  }

  @Test
  void centreOfMassAsArithmeticOfWintersTableAlone() {
    // HAT .678 at .626 of hip to shoulder (.530 + .626 x .288), thigh, shank, foot at half the
    // ankle's height:
    // .5835. Arithmetic of the table, not anatomy.
    double hat = .678 * (.530 + .626 * (.818 - .530));
    double thigh =
        2 * SegmentMass.THIGH.mass() * (.530 - SegmentMass.THIGH.centre() * Lengths.THIGH);
    double shank =
        2 * SegmentMass.SHANK.mass() * (.285 - SegmentMass.SHANK.centre() * Lengths.SHANK);
    double foot = 2 * SegmentMass.FOOT.mass() * Lengths.ANKLE / 2;
    assertEquals(.5835, hat + thigh + shank + foot, .0005);
  }

  @Test
  void centreOfMassByDeLevaLiesNearOurs() {
    // Second method with another table: de Leva, women and men mixed cannot be drawn here, so his
    // male masses and centres on our joints: head from vertex .5002 to C7, trunk .5138 from C7.
    Skeleton s = STANDING;
    double neck = s.spine(SpineJoint.C7).origin().y();
    double vertex = Landmarks.vertex(s).y();
    double hip = Lengths.HIP;
    double sum = .0694 * (vertex - .5002 * (vertex - neck)) + .4346 * (neck - .5138 * (neck - hip));
    for (Side side : Side.values()) {
      sum += .0271 * along(Landmarks.shoulder(s, side), Landmarks.elbow(s, side), .5772);
      sum += .0162 * along(Landmarks.elbow(s, side), Landmarks.wrist(s, side), .4574);
      sum += .0061 * along(Landmarks.wrist(s, side), Landmarks.fingertip(s, side), .3624);
      sum += .1416 * along(Landmarks.hip(s, side), Landmarks.knee(s, side), .4095);
      sum += .0433 * along(Landmarks.knee(s, side), Landmarks.ankle(s, side), .4395);
      sum += .0137 * Lengths.ANKLE / 2;
    }
    assertEquals(MassPoint.centreOfMass(MassPoint.of(s)).y(), sum, .025);
  }

  private static double along(Vec proximal, Vec distal, double part) {
    return proximal.towards(distal, part).y();
  }

  @Test
  void baseOfSupportIsTheHullAndItsMarginIsSigned() {
    // Worked by hand: a square of side 2 around the origin.
    SupportPolygon square =
        SupportPolygon.around(
            List.of(
                new Vec(-1, 0, -1),
                new Vec(1, 0, -1),
                new Vec(1, 5, 1),
                new Vec(-1, 0, 1),
                new Vec(.2, 0, .3)));
    assertEquals(1, square.margin(Vec.ZERO), 1e-12);
    assertEquals(.25, square.margin(new Vec(.75, 9, 0)), 1e-12);
    assertEquals(-Math.sqrt(2), square.margin(new Vec(2, 0, 2)), 1e-12);
    assertEquals(Double.NEGATIVE_INFINITY, SupportPolygon.around(List.of()).margin(Vec.ZERO));
  }

  @Test
  void standingUprightIsBalancedAndHangingInTheAirIsNot() {
    List<Vec> soles =
        Arrays.stream(Side.values()).flatMap(s -> BearingPatch.sole(STANDING, s).stream()).toList();
    SupportPolygon base = SupportPolygon.around(soles);
    Vec centre = MassPoint.centreOfMass(MassPoint.of(STANDING));
    assertTrue(base.margin(centre) * 170 > 4, "margin " + base.margin(centre) * 170);
    assertTrue(base.margin(centre.plus(new Vec(.2, 0, 0))) < 0);
  }

  private static double mass(SegmentMass... rows) {
    return Arrays.stream(rows).mapToDouble(SegmentMass::mass).sum();
  }
}
