package goniograph.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.BasePosture;
import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where supports stand, how high they are, and what of them is touched. */
class SupportsTest {
  private static final double CLOSE = 1e-9;

  static Stream<PoseFile> samples() {
    return Stream.concat(
        Poses.sample("supports.yaml").stream(), Poses.sample("props.yaml").stream());
  }

  private static Solved solve(String yaml) {
    return PoseSolver.solve(Poses.of(yaml));
  }

  private static Support support(Solved solved, String kind) {
    return solved.scene().supports().stream()
        .filter(s -> s.kind().equals(kind))
        .findFirst()
        .orElseThrow();
  }

  private static double top(Support support) {
    return support.boxes().stream()
        .mapToDouble(box -> box.centre().y() + box.half().y())
        .max()
        .orElseThrow();
  }

  private static double bottom(Support support) {
    return support.boxes().stream()
        .mapToDouble(box -> box.centre().y() - box.half().y())
        .min()
        .orElseThrow();
  }

  private static Skeleton body(Solved solved) {
    return solved.scene().keys().get(0).skeleton();
  }

  @ParameterizedTest
  @EnumSource(SupportKind.class)
  void everySupportHasASampleAndStandsOnWhatIsBelow(SupportKind kind) {
    if (kind == SupportKind.FLOOR) {
      return;
    }
    PoseFile pose =
        samples()
            .filter(p -> p.supports().stream().anyMatch(wish -> wish.kind() == kind))
            .findFirst()
            .orElseThrow();
    SupportWish wish =
        pose.supports().stream().filter(w -> w.kind() == kind).findFirst().orElseThrow();
    Support built = support(PoseSolver.solve(pose), kind.word());
    double below = pose.body().fraction(wish.heightCm() - wish.thickCm());
    assertEquals(below, bottom(built), CLOSE);
    assertTrue(top(built) >= pose.body().fraction(wish.heightCm()) - CLOSE, "as high as asked");
  }

  @ParameterizedTest
  @CsvSource({
    "counter, left", "counter, right", "counter, ahead", "table, left", "table, ahead",
    "rail, right", "rail, ahead", "wall, left", "wall, ahead", "door-frame, right",
    "chair, left", "chair, ahead", "stool, ahead", "box, right", "step, ahead"
  })
  void theDistanceRunsFromTheOutlineToTheNearestOfItsBoxes(String kind, String side) {
    Solved solved =
        solve(
            """
            pose: test
            base: standing
            supports: {%s: {side: %s, distance: 23}}
            contacts: [feet on floor]
            """
                .formatted(kind, side));
    Where where = Where.valueOf(side.toUpperCase(java.util.Locale.ROOT));
    double near =
        support(solved, kind).boxes().stream()
            .mapToDouble(box -> box.centre().dot(where.away()) - half(box, where))
            .min()
            .orElseThrow();
    double outline = Outline.trunkAndLegs(body(solved), where.away());
    assertEquals(23, 170 * (near - outline), 1e-6);
    assertEquals(23, solved.facts().distanceCm(kind).orElseThrow(), 1e-6);
  }

  private static double half(Box box, Where where) {
    return Math.abs(box.half().dot(where.away()));
  }

  @ParameterizedTest
  @CsvSource({
    "chair, 45",
    "chair back, 87",
    "counter, 90",
    "table, 75",
    "rail, 90",
    "stool, 45",
    "box, 30"
  })
  void handsLieOnWhatTheyName(String target, double height) {
    String kind = target.split(" ")[0];
    Solved solved =
        solve(
            """
            pose: test
            base: standing
            supports: {%s: {side: ahead, distance: 12}}
            contacts: [feet on floor, hands on %s]
            angles: {pelvis: tilt forward 40, hip both: flexion 40, shoulder both: flexion 70}
            """
                .formatted(kind, target));
    for (Side side : Side.values()) {
      double palm = 170 * (Landmarks.palm(body(solved), side).y() - Hands.HALF_PALM);
      double miss = solved.facts().keys().get(0).worstMissCm();
      assertEquals(height, palm, .01 + miss);
    }
  }

  @Test
  void eachHandLiesOnItsOwnArmRest() {
    Solved solved = PoseSolver.solve(named("chair-with-arms"));
    for (Side side : Side.values()) {
      Vec palm = Landmarks.palm(body(solved), side);
      assertTrue(side.sign() * palm.z() > .5 * 2 * 22 / 170, side + " outside the seat");
    }
    assertTrue(solved.facts().keys().get(0).worstMissCm() < .5);
  }

  @Test
  void aBackBesideIsNearestAndASeatElsewhere() {
    String yaml =
        """
        pose: test
        base: standing
        supports: {chair: {side: ahead, distance: 12}}
        contacts: [feet on floor, hands on %s]
        """;
    assertTrue(backX(solve(yaml.formatted("chair"))) > backX(solve(yaml.formatted("chair back"))));
  }

  /** Where the highest box of a chair is, which is its back. */
  private static double backX(Solved solved) {
    return support(solved, "chair").boxes().stream()
        .max(java.util.Comparator.comparingDouble(box -> box.centre().y()))
        .orElseThrow()
        .centre()
        .x();
  }

  @Test
  void aCushionRaisesWhatItLiesOn() {
    Solved solved = PoseSolver.solve(named("cushion-on-chair"));
    assertEquals(50, solved.facts().seatHeightCm().orElseThrow(), CLOSE);
    assertEquals(42, 170 * bottom(support(solved, "cushion")), 1e-6);
    Solved lying = PoseSolver.solve(named("bed-lying"));
    Support pillow = support(lying, "pillow");
    assertEquals(50, 170 * bottom(pillow), 1e-6);
    assertEquals(
        Landmarks.head(body(lying)).x(), pillow.boxes().get(0).centre().x(), 1e-9, "at the head");
  }

  @Test
  void aStepIsUnderTheFootThatIsOnIt() {
    Solved solved = PoseSolver.solve(named("step-and-rail"));
    Box tread = support(solved, "step").boxes().get(0);
    for (Vec sole :
        List.of(
            Landmarks.heel(body(solved), Side.RIGHT), Landmarks.toe(body(solved), Side.RIGHT))) {
      assertTrue(Math.abs(sole.x() - tread.centre().x()) <= tread.half().x(), "heel to toe");
    }
    assertEquals(15, solved.facts().stepHeightCm().orElseThrow(), CLOSE);
    assertEquals(14, solved.facts().distanceCm("rail").orElseThrow(), 1e-6);
  }

  @Test
  void onLevelGroundThereIsNoStep() {
    assertEquals(Optional.empty(), PoseSolver.solve(named("wall-ahead")).facts().stepHeightCm());
  }

  @Test
  void twoChairsAreTwoSupports() {
    Solved solved = PoseSolver.solve(named("two-chairs"));
    List<Support> chairs =
        solved.scene().supports().stream().filter(s -> s.kind().equals("chair")).toList();
    assertEquals(2, chairs.size());
    assertEquals(List.of(true, false), chairs.stream().map(Support::carries).toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"chair arms", "second chair", "counter back"})
  void whatASupportDoesNotHaveCannotBeTouched(String target) {
    assertEquals(
        List.of("pose-contact-target"),
        Poses.findings(
                """
                pose: test
                base: standing
                supports: {chair: {}, counter: {}}
                contacts: [left hand on %s]
                """
                    .formatted(target))
            .stream()
            .map(goniograph.finding.Finding::rule)
            .toList());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void theOtherSideIsTheMirrorImage(PoseFile pose) {
    if (pose.base() != pose.base().mirrored() || pose.base() == BasePosture.HALF_KNEELING) {
      return; // who lies on a side turns round, not over
    }
    Scene right = PoseSolver.solve(pose).scene();
    Scene left = PoseSolver.solve(pose.mirrored()).scene();
    for (int i = 0; i <= pose.supports().size(); i++) { // a door keeps its handle
      assertSame(mirrored(right.supports().get(i)), places(left.supports().get(i)));
    }
  }

  private static void assertSame(List<Vec> expected, List<Vec> found) {
    assertEquals(expected.size(), found.size());
    for (Vec point : expected) {
      assertTrue(
          found.stream().anyMatch(other -> other.minus(point).length() < 1e-6), () -> "" + point);
    }
  }

  private static List<Vec> places(Support support) {
    List<Vec> points = new ArrayList<>();
    for (Box box : support.boxes()) {
      assertEquals(Turn.NONE, box.axes());
      points.add(box.centre().plus(box.half()));
      points.add(box.centre().minus(box.half()));
    }
    return points;
  }

  private static List<Vec> mirrored(Support support) {
    List<Vec> points = new ArrayList<>();
    for (Box box : support.boxes()) {
      Vec c = new Vec(box.centre().x(), box.centre().y(), -box.centre().z());
      points.add(c.plus(box.half()));
      points.add(c.minus(box.half()));
    }
    return points;
  }

  private static PoseFile named(String id) {
    return samples().filter(pose -> pose.id().equals(id)).findFirst().orElseThrow();
  }
}
