package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Chain;
import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Statics;
import goniograph.body.Vec;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Held things and bands load the joints above them; what is carried is not told. */
class LoadsTest {
  private static final String WEIGHTS =
      """
      pose: test
      base: standing
      props: {dumbbell: {mass: 2}}
      contacts: [feet on floor, hands holding dumbbell]
      angles: {shoulder both: flexion 90, elbow both: flexion 0, hand both: curl 70}
      """;

  private static Solved solve(String yaml) {
    return PoseSolver.solve(Poses.of(yaml));
  }

  private static MomentFacts first(Solved solved) {
    return solved.facts().keys().get(0);
  }

  private static Skeleton body(Solved solved) {
    return solved.scene().keys().get(0).skeleton();
  }

  @Test
  void aTypedWeightHangsAtThePalm() {
    Solved solved = solve(WEIGHTS);
    Loads loads = first(solved).loads();
    assertEquals(Load.mass(2), loads.load());
    // by hand: arm straight ahead, weight x horizontal reach
    Skeleton s = body(solved);
    Vec way = Landmarks.palm(s, Side.RIGHT).minus(Landmarks.shoulder(s, Side.RIGHT));
    double reach = 1.70 * Math.hypot(way.x(), way.z());
    double empty = loads.under(Load.NONE).shoulder().getOrDefault(Side.RIGHT, Double.NaN);
    assertEquals(
        2 * Statics.GRAVITY * reach,
        loads.shoulder().getOrDefault(Side.RIGHT, Double.NaN) - empty,
        .02,
        "level arm");
    assertTrue(loads.lowBack().orElseThrow() > loads.under(Load.NONE).lowBack().orElseThrow());
  }

  @Test
  void methodFiguresForTheArmsForward() {
    // figures/method 17: arms forward 7.6 Nm; 10.2 with half a kilogram in each hand, for 70 kg and
    // 1.70 m; elbows nearly straight there.
    Loads loads = first(solve(WEIGHTS)).loads();
    double empty = loads.under(Load.NONE).shoulder().getOrDefault(Side.RIGHT, Double.NaN);
    double half = loads.under(Load.mass(.5)).shoulder().getOrDefault(Side.RIGHT, Double.NaN);
    assertEquals(10.2 - 7.6, half - empty, .6);
  }

  @Test
  void theMomentIsLinearInTheLoad() {
    Loads loads = first(solve(WEIGHTS)).loads();
    double none = loads.under(Load.NONE).lowBack().orElseThrow();
    double one = loads.under(Load.mass(1)).lowBack().orElseThrow();
    double four = loads.under(Load.mass(4)).lowBack().orElseThrow();
    assertEquals(4 * (one - none), four - none, 1e-9);
  }

  @Test
  void whatBothHandsHoldIsShared() {
    String stick =
        WEIGHTS.replace("dumbbell: {mass: 2}", "stick: {mass: 2}").replace("dumbbell", "stick");
    Loads shared = first(solve(stick)).loads();
    Loads each = first(solve(WEIGHTS)).loads();
    assertEquals(
        each.under(Load.mass(1)).shoulder().getOrDefault(Side.LEFT, Double.NaN),
        shared.shoulder().getOrDefault(Side.LEFT, Double.NaN),
        1e-9);
  }

  @Test
  void aBandPullsFromThePalmToItsAnchor() {
    Solved solved =
        solve(
            """
            pose: test
            base: sitting
            supports: {chair: {}}
            props: {band: {from: door, height: 80, distance: 60}}
            contacts: [hips on chair, feet on floor, hands holding band]
            angles: {shoulder both: extension 15, elbow both: flexion 95, hand both: curl 70}
            """);
    Prop band = solved.scene().keys().get(0).props().get(0);
    Skeleton s = body(solved);
    for (Pull pull : band.pulls()) {
      assertEquals(1, pull.share().length(), 1e-9, "one strand, one newton");
      assertTrue(pull.share().x() > .9, "towards the door ahead");
      assertEquals(0, pull.at().minus(Landmarks.palm(s, pull.side())).length(), 1e-9);
    }
    // by hand: the force times its distance from the joint, that of its line of action
    Pull right =
        band.pulls().stream().filter(p -> p.side() == Side.RIGHT).findFirst().orElseThrow();
    Vec lever = right.at().minus(Landmarks.shoulder(s, Side.RIGHT)).times(1.70);
    double perpendicular = Math.sqrt(lever.dot(lever) - Math.pow(lever.dot(right.share()), 2));
    Vec moment =
        Chain.SHOULDER.moment(
            s,
            Side.RIGHT,
            List.of(new Statics.Force(right.at().times(1.70), right.share().times(20))));
    assertEquals(20 * perpendicular, moment.length(), 1e-9);
    Loads loads = first(solved).loads();
    assertEquals(Load.NONE, loads.load(), "the force comes from the dose");
    Vec own = Chain.SHOULDER.ownMoment(s, Side.RIGHT);
    assertEquals(
        own.plus(moment).length(),
        loads.under(Load.band(20)).shoulder().getOrDefault(Side.RIGHT, Double.NaN),
        1e-9);
  }

  @Test
  void aLoopPullsTheLegsTogetherWithBothItsStrands() {
    Solved solved =
        solve(
            """
            pose: test
            base: standing
            supports: {counter: {side: left}}
            props: {band: {round: both-ankles}}
            contacts: [left foot on floor, left hand on counter]
            angles: {hip right: abduction 25}
            """);
    List<Pull> pulls = solved.scene().keys().get(0).props().get(0).pulls();
    assertEquals(Set.of(Limb.SHANK), Set.copyOf(pulls.stream().map(Pull::limb).toList()));
    assertEquals(0, pulls.get(0).share().plus(pulls.get(1).share()).length(), 1e-9);
    assertEquals(2, pulls.get(0).share().length(), 1e-9);
    Loads loads = first(solved).loads();
    assertEquals(Set.of(Side.RIGHT), loads.hip().keySet(), "the left leg stands");
    double free = loads.hip().getOrDefault(Side.RIGHT, Double.NaN);
    assertTrue(loads.under(Load.band(20)).hip().getOrDefault(Side.RIGHT, Double.NaN) > free);
  }

  @Test
  void whatIsCarriedIsNotTold() {
    Loads sitting =
        first(
                solve(
                    """
                    pose: test
                    base: sitting
                    supports: {chair: {arms: true}}
                    contacts: [hips on chair, feet on floor, hands on chair arms]
                    """))
            .loads();
    assertEquals(Map.of(), sitting.shoulder());
    assertEquals(
        List.of(
            "low back",
            "shoulder left",
            "shoulder right",
            "hip left",
            "hip right",
            "knee left",
            "knee right"),
        sitting.carried());
  }

  @Test
  void aWalkingStickCarriesItsArmAndAHeldStickDoesNot() {
    String held =
        """
        pose: test
        base: standing
        props: {stick: {}}
        contacts: [feet on floor, right hand holding stick]
        """;
    assertTrue(first(solve(held)).loads().shoulder().containsKey(Side.RIGHT));
    String stood = held.replace("stick: {}", "stick: {place: on-floor}");
    assertEquals(Set.of(Side.LEFT), first(solve(stood)).loads().shoulder().keySet());
  }
}
