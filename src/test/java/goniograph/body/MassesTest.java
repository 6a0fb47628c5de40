package goniograph.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

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
  void deLevasTablesAreWhole() {
    // Masses add up to the body (the women's to 99.99 %), and a centre in mm does not depend on
    // the ends it is measured between: head 121.5 and 118.0, shank 193.5 and 190.9.
    assertEquals(100.00, DeLeva.whole(DeLeva.MEN), .005);
    assertEquals(99.99, DeLeva.whole(DeLeva.WOMEN), .005);
    assertEquals(203.3 * .5976, DeLeva.MEN.get(0).toCentre(), .1);
    assertEquals(200.2 * .5894, DeLeva.WOMEN.get(0).toCentre(), .1);
    assertEquals(434.0 * .4459, DeLeva.MEN.get(6).toCentre(), .1);
    assertEquals(432.3 * .4416, DeLeva.WOMEN.get(6).toCentre(), .1);
  }

  /**
   * Two tables, one skeleton: Dempster's cut leaves the thigh 10 % of the body, de Leva's 14 %, so
   * the whole centres differ where the legs are far from the trunk. 4.5 cm of a body of 170 cm.
   */
  @ParameterizedTest
  @EnumSource(BasePosture.class)
  void centreOfMassByDeLevaLiesNearOursInEveryBasePosture(BasePosture base) {
    Skeleton s = Kinematics.skeleton(Body.ADULT, base.turn(), base.angles(), Vec.ZERO);
    Vec ours = MassPoint.centreOfMass(MassPoint.of(s));
    assertEquals(0, 170 * ours.minus(DeLeva.centre(DeLeva.MEN, s)).length(), 4.5, "men");
    assertEquals(0, 170 * ours.minus(DeLeva.centre(DeLeva.WOMEN, s)).length(), 4.5, "women");
  }

  @Test
  void bothTablesFollowTheBodyWhenItBendsForward() {
    // The way of the centre of mass from standing to a deep bend, by both: within 3 cm.
    JointAngles bent =
        JointAngles.NONE
            .with(Joint.PELVIS, Movement.TILT, 60)
            .both(Joint.HIP, Movement.FLEXION, 60)
            .with(Joint.LUMBAR, Movement.FLEXION, 30)
            .both(Joint.SHOULDER, Movement.FLEXION, 90);
    Skeleton s = Kinematics.skeleton(Body.ADULT, Turn.NONE, bent, new Vec(0, Lengths.HIP, 0));
    Vec ours =
        MassPoint.centreOfMass(MassPoint.of(s))
            .minus(MassPoint.centreOfMass(MassPoint.of(STANDING)));
    Vec his = DeLeva.centre(DeLeva.MEN, s).minus(DeLeva.centre(DeLeva.MEN, STANDING));
    assertTrue(ours.x() * 170 > 15, "forward " + ours.x() * 170);
    assertEquals(0, 170 * ours.minus(his).length(), 3);
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
