package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Held things are where the hands are, in every moment. */
class PropsTest {
  private static Scene sample(String id) {
    return PoseSolver.solve(
            Poses.sample("props.yaml").stream()
                .filter(pose -> pose.id().equals(id))
                .findFirst()
                .orElseThrow())
        .scene();
  }

  private static Skeleton body(Scene scene) {
    return scene.keys().get(0).skeleton();
  }

  private static Prop prop(Scene scene) {
    return scene.keys().get(0).props().get(0);
  }

  private static <T> List<T> shapes(Prop prop, Class<T> kind) {
    return prop.shapes().stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static double cm(double fraction) {
    return 170 * fraction;
  }

  /** From a point to a bar's axis. */
  private static double off(Shape.Rod rod, Vec point) {
    Vec way = rod.to().minus(rod.from()).unit();
    Vec from = point.minus(rod.from());
    return from.minus(way.times(from.dot(way))).length();
  }

  @ParameterizedTest
  @EnumSource(ThingKind.class)
  void everyThingHasASample(ThingKind kind) {
    assertTrue(
        Poses.sample("props.yaml").stream()
            .flatMap(pose -> pose.props().stream())
            .anyMatch(wish -> wish.word().equals(kind.word())));
  }

  @Test
  void aFreeBandIsAsLongAsTheHandsAreApart() {
    Scene scene = sample("band-between-hands");
    Skeleton s = body(scene);
    double apart = Landmarks.palm(s, Side.LEFT).minus(Landmarks.palm(s, Side.RIGHT)).length();
    assertEquals(cm(apart), cm(prop(scene).length().orElseThrow()), 1e-9);
  }

  @Test
  void aBandFollowsTheHandsAndItsAnchorStays() {
    Scene scene = PoseSolver.solve(Poses.demo("sh-row-band")).scene();
    Vec anchor = shapes(prop(scene), Shape.Ball.class).get(0).centre();
    for (Moment moment : scene.motion()) {
      Prop band = moment.props().get(0);
      assertEquals(anchor, shapes(band, Shape.Ball.class).get(0).centre(), moment.name());
      double length =
          Stream.of(Side.values())
              .mapToDouble(side -> Landmarks.palm(moment.skeleton(), side).minus(anchor).length())
              .sum();
      assertEquals(length, band.length().orElseThrow(), 1e-9);
    }
  }

  @Test
  void aBandFromASupportIsFastAtItsNearEdge() {
    Scene scene = sample("band-round-foot-from-support");
    Vec knob = shapes(prop(scene), Shape.Ball.class).get(0).centre();
    Support table =
        scene.supports().stream().filter(s -> s.kind().equals("table")).findFirst().orElseThrow();
    double near =
        table.boxes().stream()
            .mapToDouble(box -> box.centre().x() - box.half().x())
            .min()
            .orElseThrow();
    assertEquals(near, knob.x(), 1e-9);
    Pull pull = prop(scene).pulls().get(0);
    assertEquals(Limb.FOOT, pull.limb());
    assertTrue(pull.share().x() > .99, "straight ahead, level with the foot");
  }

  @Test
  void aLoopIsAsLongAsItsTwoStrandsAndTheLegsItGoesRound() {
    Prop band = prop(sample("band-round-ankles"));
    List<Shape.Ring> rings = shapes(band, Shape.Ring.class);
    double apart = rings.get(0).centre().minus(rings.get(1).centre()).length();
    double round = 2 * Math.PI * rings.get(0).b().length();
    assertEquals(2 * apart + round, band.length().orElseThrow(), 1e-9);
  }

  @Test
  void aBallFitsBetweenThePalms() {
    Scene scene = sample("ball-in-hands");
    Shape.Ball ball = shapes(prop(scene), Shape.Ball.class).get(0);
    assertEquals(24, cm(2 * ball.radius()), 1e-6);
    for (Side side : Side.values()) {
      double palm = Landmarks.palm(body(scene), side).minus(ball.centre()).length();
      assertEquals(cm(Hands.HALF_PALM), cm(palm - ball.radius()), .01, side + " palm on the ball");
    }
  }

  @Test
  void aStickLiesInBothFists() {
    Scene scene = sample("stick-in-hands");
    Shape.Rod stick = shapes(prop(scene), Shape.Rod.class).get(0);
    for (Side side : Side.values()) {
      assertTrue(cm(off(stick, Landmarks.palm(body(scene), side))) < 4);
    }
    assertTrue(cm(stick.to().minus(stick.from()).length()) > 99.9);
  }

  @Test
  void aStickAlongTheBackTouchesSacrumAndChestAndCutsNeither() {
    Scene scene = sample("stick-along-back");
    Skeleton s = body(scene);
    Shape.Rod stick = shapes(prop(scene), Shape.Rod.class).get(0);
    Vec out = s.spine(SpineJoint.T8).axes().x().times(-1);
    Vec way = stick.to().minus(stick.from()).unit();
    Vec back = s.pelvis().axes().z().cross(way).unit();
    Vec outward = back.dot(out) > 0 ? back : back.times(-1);
    double line = stick.from().dot(outward) - stick.radius();
    double chest = TrunkSection.at(SpineJoint.T5).farthest(s, outward).dot(outward);
    assertEquals(0, cm(line - chest), .5, "at the chest");
    double hips = Outline.hips(s, outward);
    assertTrue(cm(line - hips) < 2 && cm(line - hips) > -1.5, "hips " + cm(line - hips));
  }

  @Test
  void aWalkingStickStandsOnTheFloor() {
    Shape.Rod stick = shapes(prop(sample("walking-stick")), Shape.Rod.class).get(0);
    assertEquals(0, Math.min(stick.from().y(), stick.to().y()), 1e-9);
  }

  @Test
  void eachHandHoldsAWeightOfItsOwn() {
    Prop weights = prop(sample("dumbbells"));
    assertEquals(6, shapes(weights, Shape.Rod.class).size(), "handle and two discs, twice");
    assertEquals(2, weights.massKg().orElseThrow());
    weights.pulls().forEach(pull -> assertEquals(0, pull.share().plus(Vec.UP).length(), 1e-9));
  }

  @Test
  void aHeavierDiscIsLarger() {
    double light = disc(.5);
    double heavy = disc(4);
    assertTrue(heavy > 1.2 * light);
  }

  private static double disc(double kg) {
    Scene scene =
        PoseSolver.solve(
                Poses.of(
                    """
                    pose: test
                    base: standing
                    props: {dumbbell: {mass: %s}}
                    contacts: [feet on floor, right hand holding dumbbell]
                    """
                        .formatted(kg)))
            .scene();
    return shapes(prop(scene), Shape.Rod.class).stream()
        .mapToDouble(Shape.Rod::radius)
        .max()
        .orElseThrow();
  }

  @Test
  void aTowelFillsWhatIsUnderTheKnee() {
    Scene scene = sample("towel-under-knee");
    Shape.Rod towel = shapes(prop(scene), Shape.Rod.class).get(0);
    Vec knee = Landmarks.knee(body(scene), Side.RIGHT);
    assertEquals(50, cm(towel.from().y() - towel.radius()), .01, "on the bed");
    assertEquals(knee.y() - .034, towel.from().y() + towel.radius(), .01, "up to the knee");
    assertEquals(List.of(), prop(scene).pulls());
  }

  @Test
  void aCushionFillsTheGapBetweenTheKnees() {
    Scene scene = sample("pillow-between-knees");
    Box cushion = shapes(prop(scene), Box.class).get(0);
    Vec left = Landmarks.knee(body(scene), Side.LEFT);
    Vec right = Landmarks.knee(body(scene), Side.RIGHT);
    assertTrue(cushion.centre().minus(left.towards(right, .5)).length() < .06);
    assertTrue(cm(2 * cushion.half().y()) >= 4);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          props: {bal: {}}                       | field-unknown | bal
          props: {dumbbell: {mass: 2kg}}         | pose-mass     | 2kg
          props: {dumbbell: {mass: 0}}           | pose-mass     | 0
          props: {towel: {laid: flat}}           | field-word    | flat
          props: {ball: {place: between-knee}}   | field-word    | between-knee
          props: {band: {round: both-thigs}}     | field-word    | both-thigs
          props: {ball: {laid: rolled}}          | field-unknown | laid
          """)
  void whatIsNotUnderstoodIsFound(String line, String rule, String word) {
    var findings = Poses.findings("pose: test\nbase: standing\n" + line + "\n");
    assertEquals(List.of(rule), findings.stream().map(f -> f.rule()).toList());
    assertTrue(findings.get(0).what().contains(word), findings.get(0).what());
    assertEquals(3, findings.get(0).at().line());
  }

  @Test
  void theOtherSideHoldsTheMirrorImage() {
    PoseFile pose =
        Poses.sample("props.yaml").stream()
            .filter(p -> p.id().equals("towel-under-knee"))
            .findFirst()
            .orElseThrow();
    Shape.Rod right =
        shapes(PoseSolver.solve(pose).scene().keys().get(0).props().get(0), Shape.Rod.class).get(0);
    Shape.Rod left =
        shapes(
                PoseSolver.solve(pose.mirrored()).scene().keys().get(0).props().get(0),
                Shape.Rod.class)
            .get(0);
    Vec middle = right.from().towards(right.to(), .5);
    Vec mirror = left.from().towards(left.to(), .5);
    assertEquals(0, new Vec(middle.x(), middle.y(), -middle.z()).minus(mirror).length(), 1e-9);
  }
}
