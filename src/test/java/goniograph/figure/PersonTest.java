package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.BasePosture;
import goniograph.body.Build;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Movement;
import goniograph.body.Skeleton;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import goniograph.pose.Camera;
import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Build and dress change the shape drawn and nothing else. */
class PersonTest {
  private static final Projection FLAT = Projection.of(new Camera(0, 0), 170);
  private static final Projection FRONT = Projection.of(new Camera(90, 0), 170);

  private static final Vec DOWN = Vec.UP.times(-1);

  private static List<Part> body(Skeleton s, Person person, Projection paper) {
    return new Bodies(person).of(s, paper);
  }

  private static Person built(Build build) {
    return new Person(build, false, false);
  }

  private static Envelope box(Skeleton s, Person person, Projection paper, Kind kind) {
    return boxes(s, person, paper).getOrDefault(kind, new Envelope());
  }

  /** What the parts of each kind fill on paper. */
  private static Map<Kind, Envelope> boxes(Skeleton s, Person person, Projection paper) {
    Map<Kind, Envelope> boxes = new EnumMap<>(Kind.class);
    for (Part part : body(s, person, paper)) {
      boxes
          .computeIfAbsent(part.id().kind(), kind -> new Envelope())
          .expandToInclude(part.outline().getEnvelopeInternal());
    }
    return boxes;
  }

  private static Skeleton lying(BasePosture base) {
    return Poses.skeleton(base, base.angles(), .1);
  }

  /** Issue 3: no part more than .5 cm off its contact; here 170 mm of paper are 170 cm. */
  @ParameterizedTest
  @EnumSource(Build.class)
  void whoLiesStaysOnTheMat(Build build) {
    for (BasePosture base :
        List.of(
            BasePosture.LYING_ON_BACK,
            BasePosture.LYING_ON_FRONT,
            BasePosture.LYING_ON_LEFT_SIDE,
            BasePosture.LYING_ON_RIGHT_SIDE)) {
      Skeleton s = lying(base);
      Map<Kind, Envelope> plain = boxes(s, Person.ADULT, FLAT);
      Map<Kind, Envelope> drawn = boxes(s, built(build), FLAT);
      for (Kind kind : List.of(Kind.TRUNK, Kind.THIGH, Kind.SHANK, Kind.UPPER_ARM, Kind.HEAD)) {
        double lowest = plain.getOrDefault(kind, new Envelope()).getMaxY();
        double now = drawn.getOrDefault(kind, new Envelope()).getMaxY();
        assertEquals(lowest, now, .5, base + " " + kind);
      }
    }
  }

  /** What bears on a seat is the underside of trunk and thighs; on a backrest, the back. */
  @ParameterizedTest
  @EnumSource(Build.class)
  void whoSitsStaysOnTheSeatAndWhoStandsStaysAtTheWall(Build build) {
    Envelope sits = box(Poses.sitting(), built(build), FLAT, Kind.THIGH);
    assertEquals(
        box(Poses.sitting(), Person.ADULT, FLAT, Kind.THIGH).getMaxY(), sits.getMaxY(), .5);
    Envelope stands = box(Poses.standing(), built(build), FLAT, Kind.TRUNK);
    assertEquals(
        box(Poses.standing(), Person.ADULT, FLAT, Kind.TRUNK).getMinX(), stands.getMinX(), .5);
  }

  @ParameterizedTest
  @EnumSource(Build.class)
  void feetAndHandsAreEveryonesAlike(Build build) {
    for (Kind kind : List.of(Kind.FOOT, Kind.HAND)) {
      assertEquals(
          box(Poses.standing(), Person.ADULT, FLAT, kind),
          box(Poses.standing(), built(build), FLAT, kind));
    }
  }

  @Test
  void buildsLookDifferent() {
    double plain = area(Person.ADULT, FRONT);
    assertTrue(area(built(Build.LARGER), FRONT) > 1.08 * plain);
    assertTrue(area(built(Build.THINNER), FRONT) < .95 * plain);
    double head = box(Poses.standing(), Person.ADULT, FLAT, Kind.HEAD).getWidth();
    double child = box(Poses.standing(), built(Build.CHILD), FLAT, Kind.HEAD).getWidth();
    assertEquals(1.20, child / head, .03);
  }

  private static double area(Person person, Projection paper) {
    return Hulls.union(body(Poses.standing(), person, paper).stream().map(Part::outline).toList())
        .getArea();
  }

  @Test
  void anOlderBackIsRounderWhereItIsFree() {
    Skeleton s = Poses.standing();
    TrunkSection plain = TrunkSection.ALL.get(7);
    TrunkSection older = new Grown(Build.OLDER, s).section(7);
    Vec back = new Vec(-1, 0, 0);
    double stands = older.farthest(s, back).dot(back) - plain.farthest(s, back).dot(back);
    assertTrue(170 * stands > 1.2, "at T5 " + 170 * stands);
    Skeleton lies = lying(BasePosture.LYING_ON_BACK);
    TrunkSection flat = new Grown(Build.OLDER, lies).section(7);
    assertEquals(plain.farthest(lies, DOWN).y(), flat.farthest(lies, DOWN).y(), 2e-3, "on the mat");
  }

  /** The same numbers at the same joints, whoever is drawn: they are read from the skeleton. */
  @Test
  void numbersAndTellingAreTheSameForEveryone() {
    Scene scene = Poses.armRaise(Poses.SIDE, Poses.angle("shoulder"));
    String told = PoseTelling.of(scene).toString();
    List<String> plain = numbers(scene, Person.ADULT);
    assertEquals(1, plain.stream().filter(n -> !n.isEmpty()).count());
    for (Build build : Build.values()) {
      Person person = new Person(build, build == Build.OLDER, true);
      assertEquals(plain, numbers(scene, person), person.toString());
      assertEquals(told, PoseTelling.of(scene).toString());
    }
  }

  private static List<String> numbers(Scene scene, Person person) {
    List<String> set = new ArrayList<>();
    Lettering recorded =
        (text, size) -> {
          set.add(text);
          return Poses.SQUARES.set(text, size);
        };
    Figure.of(
        scene, FigureOptions.STANDARD.of(person).forTherapist().lettered(recorded, LimbWords.NONE));
    return set.stream().distinct().toList();
  }

  @Test
  void aHeadCoveringHidesHairAndNeckAndLeavesTheFaceFree() {
    Person covered = new Person(Build.ADULT, true, false);
    Part head = part(Poses.standing(), covered, Kind.HEAD);
    Geometry cloth = tone(head, Tone.CLOTH).orElseThrow();
    Part bare = part(Poses.standing(), Person.ADULT, Kind.HEAD);
    Geometry hair = tone(bare, Tone.HAIR).orElseThrow();
    assertTrue(cloth.buffer(.05).covers(hair), "all hair lies under the cloth");
    Geometry face = tone(head, Tone.SKIN).orElseThrow();
    assertTrue(face.getArea() > .35 * bare.outline().getArea(), "the face is free");
    List<Part.Region> dark = head.regions().stream().filter(r -> r.tone() == Tone.HAIR).toList();
    assertEquals(2, dark.size(), "two eyes and no hair");
    dark.forEach(eye -> assertTrue(face.covers(eye.area())));
  }

  @Test
  void fromBehindACoveredHeadIsClothAlone() {
    Projection behind = Projection.of(new Camera(-90, 8), 100);
    Part head =
        body(Poses.standing(), new Person(Build.ADULT, true, false), behind).stream()
            .filter(part -> part.id().kind() == Kind.HEAD)
            .findFirst()
            .orElseThrow();
    assertTrue(tone(head, Tone.SKIN).orElseThrow().isEmpty());
  }

  private static Part part(Skeleton s, Person person, Kind kind) {
    return body(s, person, FRONT).stream()
        .filter(part -> part.id().kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Geometry> tone(Part part, Tone tone) {
    return part.regions().stream().filter(r -> r.tone() == tone).map(Part.Region::area).findFirst();
  }

  @Test
  void aLargerBuildChangesTheDrawing() {
    Scene scene = Poses.armRaise(Poses.SIDE);
    FigureOptions plain = FigureOptions.STANDARD;
    assertNotEquals(
        Figure.of(scene, plain).svg("a", "t", "d"),
        Figure.of(scene, plain.of(built(Build.LARGER))).svg("a", "t", "d"));
  }

  /** A deep bend under a large build keeps one outline: the weld grows with the limb. */
  @Test
  void largeLimbsStillFlowIntoTheTrunk() {
    JointAngles deep =
        BasePosture.STANDING
            .angles()
            .both(Joint.HIP, Movement.FLEXION, 110)
            .both(Joint.KNEE, Movement.FLEXION, 110);
    Skeleton s = Poses.skeleton(BasePosture.STANDING, deep, .4);
    for (Part part : body(s, built(Build.LARGER), FLAT)) {
      if (part.id().kind() == Kind.THIGH) {
        double plain =
            body(s, Person.ADULT, FLAT).stream()
                .filter(p -> p.id().equals(part.id()))
                .mapToDouble(p -> p.welds().get(0).radius())
                .findFirst()
                .orElseThrow();
        assertTrue(part.welds().get(0).radius() > 1.15 * plain);
      }
    }
  }
}
