package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.BasePosture;
import goniograph.body.Build;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.pose.Box;
import goniograph.pose.Moment;
import goniograph.pose.Scene;
import goniograph.pose.Support;
import java.util.List;
import org.junit.jupiter.api.Test;

class WheelchairTest {
  private static final Person WHEELED = new Person(Build.ADULT, false, true);

  private static Scene seated() {
    JointAngles down = BasePosture.SITTING.angles();
    JointAngles up = down.with(Joint.KNEE, Side.RIGHT, Movement.FLEXION, 10);
    return Poses.moving(BasePosture.SITTING, down, up, .33, List.of(Poses.chair()), Poses.SIDE);
  }

  @Test
  void whoStaysSeatedSitsOnTheSameSeatInAWheelchair() {
    Support chair = seated().supports().get(0);
    Support wheelchair = Wheelchair.in(seated()).supports().get(0);
    assertEquals(Wheelchair.KIND, wheelchair.kind());
    Box seat = chair.boxes().get(0);
    assertEquals(seat, wheelchair.boxes().get(0));
    assertTrue(wheelchair.boxes().contains(chair.boxes().get(5)), "the back rest stays");
    assertTrue(
        wheelchair.boxes().stream().noneMatch(chair.boxes().subList(1, 5)::contains), "no legs");
  }

  @Test
  void allWheelsStandOnTheFloorBesideTheSeat() {
    Support wheelchair = Wheelchair.in(seated()).supports().get(0);
    List<Wheelchair.Wheel> wheels = Wheelchair.wheels(wheelchair);
    assertEquals(4, wheels.size());
    for (Wheelchair.Wheel wheel : wheels) {
      assertEquals(0, wheel.centre().y() - wheel.radius(), 1e-12);
    }
    double half = wheelchair.boxes().get(0).half().z();
    assertTrue(wheels.get(0).centre().z() < -half && wheels.get(1).centre().z() > half);
  }

  @Test
  void whoRisesKeepsTheChair() {
    Scene lean = Poses.lean(Poses.SIDE);
    Moment risen = new Moment("end", Poses.standing(), List.of());
    Scene rises =
        new Scene(
            lean.id(),
            lean.base(),
            lean.body(),
            lean.view(),
            lean.camera(),
            List.of(lean.keys().get(0), risen),
            List.of(lean.motion().get(0), risen),
            lean.supports(),
            lean.movingLimbs(),
            lean.movingTrunk(),
            lean.marks(),
            lean.focus(),
            lean.wrong());
    assertSame(rises, Wheelchair.in(rises));
  }

  @Test
  void whoStandsKeepsTheChairTheyHold() {
    Scene stands =
        Poses.moving(
            BasePosture.STANDING,
            JointAngles.NONE,
            JointAngles.NONE,
            .53,
            List.of(Poses.chair()),
            Poses.SIDE);
    assertSame(stands, Wheelchair.in(stands));
  }

  @Test
  void theBodyIsSeenThroughTheWheel() {
    Projection paper = Projection.of(Poses.SIDE, 100);
    Scene scene = Wheelchair.in(seated());
    Part wheel =
        new SceneParts(paper, scene)
            .of(scene.keys().get(0), false).stream()
                .filter(part -> part.id().kind() == Kind.WHEEL)
                .findFirst()
                .orElseThrow();
    double filled = wheel.outline().getArea() / wheel.outline().convexHull().getArea();
    assertTrue(filled < .35, "share of the wheel that hides: " + filled);
  }

  @Test
  void theWheelchairIsDrawnOnlyWhereItIsAsked() {
    FigureOptions plain = FigureOptions.STANDARD;
    String with = Figure.of(seated(), plain.of(WHEELED)).svg("a", "t", "d");
    String without = Figure.of(seated(), plain).svg("a", "t", "d");
    assertTrue(!with.equals(without));
    assertEquals(with, Figure.of(seated(), plain.of(WHEELED)).svg("a", "t", "d"));
  }
}
