package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.body.BasePosture;
import goniograph.body.Body;
import goniograph.body.Build;
import goniograph.body.Freedom;
import goniograph.body.JointAngles;
import goniograph.body.Kinematics;
import goniograph.body.MotionRange;
import goniograph.body.Movement;
import goniograph.body.RangeOfMotion;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Turn;
import goniograph.body.Vec;
import goniograph.pose.Camera;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class BodiesTest {

  /** Any body a joint allows, from anywhere, in any dress: every part is an area without fault. */
  @Test
  void anyBodyFromAnywhereIsDrawnWhole() {
    Random random = new Random(20261125);
    Build[] builds = Build.values();
    BasePosture[] bases = BasePosture.values();
    for (int i = 0; i < 60; i++) {
      Skeleton s =
          Kinematics.skeleton(
              Body.ADULT, bases[i % bases.length].turn(), any(random), new Vec(0, .5, 0));
      Camera camera = new Camera(360 * random.nextDouble(), 60 * random.nextDouble() - 20);
      Person person = new Person(builds[i % builds.length], i % 3 == 0, false);
      Projection paper = Projection.of(camera, i % 2 == 0 ? 60 : 140);
      List<Part> parts = new Bodies(person).of(s, paper);
      assertEquals(2 + 2 * 6, parts.size());
      for (Part part : parts) {
        String which = part.id() + " " + i;
        assertTrue(part.outline().isValid() && part.outline().getArea() > .1, which);
        part.regions().forEach(region -> assertTrue(region.area().isValid(), which));
      }
    }
  }

  private static JointAngles any(Random random) {
    JointAngles angles = JointAngles.NONE;
    for (Freedom freedom : Freedom.all()) {
      MotionRange range =
          RangeOfMotion.hard(freedom, false).orElse(new MotionRange(-30, 30, "test"));
      double value = range.low() + (range.high() - range.low()) * random.nextDouble();
      boolean cm = freedom.movement().unit() == Movement.Unit.CM;
      angles = angles.with(freedom, cm ? value / 20 : value);
    }
    return angles;
  }

  /** A grip is seen: a closed hand fills less of the paper than an open one. */
  @Test
  void aClosedHandIsSmallerThanAnOpenOne() {
    Skeleton open =
        Kinematics.skeleton(Body.ADULT, Turn.NONE, JointAngles.NONE, Vec.ZERO)
            .withCurl(Side.RIGHT, 0);
    Skeleton closed = open.withCurl(Side.RIGHT, 70);
    assertTrue(hand(closed) < .75 * hand(open));
  }

  private static double hand(Skeleton s) {
    Projection paper = Projection.of(new Camera(0, 0), 100);
    return new HandShape(paper, s, Side.RIGHT).part().outline().getArea();
  }
}
