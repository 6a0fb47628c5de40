package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Lifts hands, elbows and feet that touch nothing out of what is below the body. */
final class Clearance {
  private static final int ROUNDS = 6;

  private final Touch touch;

  Clearance(Touch touch) {
    this.touch = touch;
  }

  /** Arms, then feet. */
  Skeleton clear(Skeleton s, List<Contact> contacts) {
    Skeleton body = s;
    for (Side side : Side.values()) {
      boolean lies = !Touch.of(contacts, side, Part.FOREARM).isEmpty();
      boolean held = !Touch.of(contacts, side, Part.HAND, Part.FINGERTIPS, Part.ELBOW).isEmpty();
      body = held ? body : lies ? hand(body, side) : arm(body, side);
    }
    return feet(body, contacts);
  }

  /** Feet alone. */
  Skeleton feet(Skeleton s, List<Contact> contacts) {
    Skeleton body = s;
    for (Side side : Side.values()) {
      if (Touch.of(contacts, side, Part.FOOT, Part.HEEL, Part.TOES).isEmpty()) {
        body = foot(body, side, !Touch.of(contacts, side, Part.KNEE).isEmpty());
      }
    }
    return body;
  }

  /** The hand of a lying forearm straightened along what it would sink into. */
  private Skeleton hand(Skeleton s, Side side) {
    if (handDepth(s, side) <= 0) {
      return s;
    }
    Frame hand = s.limb(Limb.HAND, side);
    Vec fingers = hand.axes().y().times(-1);
    Turn up = Turn.between(fingers, Hands.along(fingers, Vec.UP));
    Frame straight = new Frame(hand.origin(), up.then(hand.axes()));
    return s.withCurl(side, 0).with(side, Map.of(Limb.HAND, straight));
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
    return Stream.of(
            LegSolver.heelPoint(s, side),
            LegSolver.ballPoint(s, side),
            LegSolver.toePoint(s, side),
            Landmarks.toe(s, side))
        .mapToDouble(Vec::y)
        .min()
        .orElse(0);
  }
}
