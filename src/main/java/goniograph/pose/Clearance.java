package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Toes;
import goniograph.body.Vec;
import java.util.List;
import java.util.stream.Stream;

/** Lifts hands, elbows and feet that touch nothing out of what is below the body. */
final class Clearance {
  private static final int ROUNDS = 6;

  /** The rounded toe tip in the frame of the toes, and its radius. */
  private static final Vec TOE = new Vec(.096, -.0265, 0);

  private static final double TOE_RADIUS = .0125;

  private final Touch touch;

  Clearance(Touch touch) {
    this.touch = touch;
  }

  Skeleton clear(Skeleton s, List<Contact> contacts) {
    Skeleton body = s;
    for (Side side : Side.values()) {
      if (Touch.of(contacts, side, Part.HAND, Part.FINGERTIPS, Part.FOREARM, Part.ELBOW)
          .isEmpty()) {
        body = arm(body, side);
      }
      if (Touch.of(contacts, side, Part.FOOT, Part.HEEL, Part.TOES).isEmpty()) {
        body = foot(body, side, !Touch.of(contacts, side, Part.KNEE).isEmpty());
      }
    }
    return body;
  }

  private Skeleton arm(Skeleton s, Side side) {
    Skeleton body = s;
    for (int i = 0;
        i < ROUNDS && Math.max(handDepth(body, side), elbowDepth(body, side)) > 0;
        i++) {
      Vec up = Vec.UP.times(Math.max(0, handDepth(body, side) + 1e-4));
      Vec wrist = Landmarks.wrist(body, side).plus(up);
      double ground = touch.ground(Landmarks.elbow(body, side));
      body = ArmSolver.reach(body, side, wrist, body.limb(Limb.HAND, side).axes(), ground);
    }
    return body;
  }

  private Skeleton foot(Skeleton s, Side side, boolean kneeling) {
    Skeleton body = s;
    for (int i = 0; i < ROUNDS && footDepth(body, side) > 0; i++) {
      double up = footDepth(body, side) + 1e-4;
      body = kneeling ? LegSolver.kneeBent(body, side, up) : LegSolver.lifted(body, side, up);
    }
    return body;
  }

  /** How deep a point lies below what is under the body, as if it had a radius. */
  double depth(Vec point, double radius) {
    return touch.ground(point) + radius - point.y();
  }

  /** How deep an elbow lies below the ground; not above 0 where it is clear. */
  double elbowDepth(Skeleton s, Side side) {
    return depth(Landmarks.elbow(s, side), Touch.ELBOW);
  }

  /** How deep a hand lies below the ground; not above 0 where it is clear. */
  double handDepth(Skeleton s, Side side) {
    double wrist = depth(Landmarks.wrist(s, side), .012);
    double palm = depth(Landmarks.palm(s, side), .010);
    return Math.max(wrist, Math.max(palm, depth(Landmarks.fingertip(s, side), .006)));
  }

  /** How deep a foot lies below the ground; not above 0 where it is clear. */
  double footDepth(Skeleton s, Side side) {
    return touch.ground(Landmarks.ankle(s, side)) - lowestOfFoot(s, side);
  }

  /** The height of what is lowest of a foot: heel, ball or toes. */
  static double lowestOfFoot(Skeleton s, Side side) {
    double toe = Toes.frame(s, side).point(TOE).y() - TOE_RADIUS;
    return Stream.of(
            LegSolver.heelPoint(s, side), LegSolver.ballPoint(s, side), Landmarks.toe(s, side))
        .mapToDouble(Vec::y)
        .reduce(toe, Math::min);
  }
}
