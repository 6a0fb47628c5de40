package goniograph.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class FingersTest {
  private static final Side RIGHT = Side.RIGHT;

  private static Skeleton hand(Fingers bent) {
    return Kinematics.skeleton(Body.ADULT, Turn.NONE, JointAngles.NONE, Vec.ZERO).with(RIGHT, bent);
  }

  /** Where the middle fingertip lies in the hand's frame: along the hand, and towards the palm. */
  private static double[] tip(Fingers bent) {
    Skeleton s = hand(bent);
    Frame frame = s.limb(Limb.HAND, RIGHT);
    Vec local = frame.axes().invert(Landmarks.fingertip(s, RIGHT).minus(frame.origin()));
    return new double[] {-local.y(), -local.z()};
  }

  /**
   * AAOS (from memory, not checked): knuckles bend to 90, middle joints to 100, end joints to 90.
   * Which joints bend in which shape: Wehbé and Hunter 1985 (from memory, not checked).
   */
  @Test
  void theShapesBendTheirJointsFullyOrNotAtAll() {
    for (FingerShape shape : FingerShape.values()) {
      Fingers f = shape.fingers();
      assertTrue(f.knuckles() <= 90 && f.middle() <= 100 && f.ends() <= 90, shape.word());
    }
    assertEquals(List.of(false, false, false), bends(FingerShape.STRAIGHT));
    assertEquals(List.of(false, true, true), bends(FingerShape.HOOK));
    assertEquals(List.of(true, true, true), bends(FingerShape.FIST));
    assertEquals(List.of(true, false, false), bends(FingerShape.TABLE_TOP));
    assertEquals(List.of(true, true, false), bends(FingerShape.FLAT_FIST));
  }

  private static List<Boolean> bends(FingerShape shape) {
    Fingers f = shape.fingers();
    return List.of(f.knuckles() > 45, f.middle() > 45, f.ends() > 45);
  }

  @Test
  void aStraightHandIsAsLongAsItIsDrawn() {
    // The figure method draws the hand .100 of body height long (Drillis and Contini: .108).
    assertEquals(.100, tip(Fingers.FLAT)[0], .001);
    assertEquals(0, tip(Fingers.FLAT)[1], 1e-9);
  }

  @Test
  void theTipsOfTheShapesAreFarApart() {
    double[] hook = tip(FingerShape.HOOK.fingers());
    double[] table = tip(FingerShape.TABLE_TOP.fingers());
    double[] flat = tip(FingerShape.FLAT_FIST.fingers());
    double[] fist = tip(FingerShape.FIST.fingers());
    assertTrue(hook[0] > .048 && hook[1] > 0, "a hook stays before the knuckles");
    assertTrue(table[1] > .045 && Math.abs(table[0] - .048) < .005, "a table stands out");
    assertTrue(flat[0] < .030 && flat[1] > .015, "flat fingers lie along the palm");
    assertTrue(fist[1] < flat[1], "a fist's tips turn into the palm");
  }

  @Test
  void inAPinchTheThumbMeetsTheIndex() {
    Skeleton s = hand(FingerShape.PINCH.fingers());
    Vec index = Finger.INDEX.joints(s, RIGHT).get(3);
    Vec thumb = Thumb.joints(s, RIGHT).get(3);
    // both pads are about .006 thick, so the middles are at most twice that and a little apart
    assertTrue(index.minus(thumb).length() < .0135, "" + index.minus(thumb).length());
  }

  @Test
  void fingersKeepTheirLengthsHoweverTheyBend() {
    for (Finger finger : Finger.values()) {
      for (int i = 0; i < 3; i++) {
        double straight = length(finger, Fingers.FLAT, i);
        for (FingerShape shape : FingerShape.values()) {
          assertEquals(straight, length(finger, shape.fingers(), i), 1e-12);
        }
      }
    }
  }

  private static double length(Finger finger, Fingers bent, int part) {
    List<Vec> joints = finger.joints(hand(bent), RIGHT);
    return joints.get(part + 1).minus(joints.get(part)).length();
  }

  /** Buchholz, Armstrong and Goldstein 1992: parts as shares of the hand (from memory). */
  @Test
  void partsOfFingersHaveThePublishedProportions() {
    double[][] table = {
      {.245, .143, .097}, {.266, .170, .108}, {.244, .165, .107}, {.204, .117, .093}
    };
    for (Finger finger : Finger.values()) {
      for (int i = 0; i < 3; i++) {
        double published = table[finger.ordinal()][i];
        double share = length(finger, Fingers.FLAT, i) / .096;
        assertEquals(published, share, .002, finger + " " + i);
      }
    }
  }

  @Test
  void aGripClosesMoreRoundThinnerThings() {
    double stick = Fingers.round(1.5 / 170).knuckles();
    double bottle = Fingers.round(3.5 / 170).knuckles();
    double ball = Fingers.round(11.0 / 170).knuckles();
    assertTrue(70 >= stick && stick > bottle && bottle > ball && ball > 0);
  }

  /**
   * A finger round a bottle neither enters it nor leaves it by more than 1 cm: the bottle touches
   * the first two parts, and knuckle, end joint and tip are measured from its middle.
   */
  @Test
  void aGripLiesAlongTheThingHeld() {
    double radius = 3.5 / 170;
    Fingers grip = Fingers.round(radius);
    List<Vec> joints = Finger.MIDDLE.joints(hand(grip), RIGHT);
    Vec back = joints.get(0).minus(joints.get(1)).unit();
    Vec on = joints.get(2).minus(joints.get(1)).unit();
    double half = Math.toRadians(180 - grip.middle()) / 2;
    Vec middle = joints.get(1).plus(back.plus(on).unit().times((radius + .006) / Math.sin(half)));
    for (int i : new int[] {0, 2, 3}) {
      double away = joints.get(i).minus(middle).length() - radius - .006;
      assertTrue(away > -.002 && away < .006, i + " " + away * 170 + " cm");
    }
  }

  @Test
  void leftAndRightHandsMirrorEachOther() {
    for (FingerShape shape : FingerShape.values()) {
      Skeleton s = hand(shape.fingers()).with(Side.LEFT, shape.fingers());
      for (Finger finger : Finger.values()) {
        Vec right = finger.joints(s, RIGHT).get(3);
        Vec left = finger.joints(s, Side.LEFT).get(3);
        assertEquals(0, right.minus(new Vec(left.x(), left.y(), -left.z())).length(), 1e-12);
      }
    }
  }
}
