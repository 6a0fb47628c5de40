package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.List;
import java.util.stream.Stream;

/** Lifts hands and feet that touch nothing out of the floor. */
final class Clearance {
  /** The elbow's radius: how high its centre lies when it rests on the floor. */
  static final double ELBOW = .0235;

  private static final int ROUNDS = 6;

  private Clearance() {}

  static Skeleton clear(Skeleton s, List<Contact> contacts) {
    Skeleton body = s;
    for (Side side : Side.values()) {
      if (free(contacts, side, Part.HAND, Part.FINGERTIPS)) {
        body = hand(body, side);
      }
      if (free(contacts, side, Part.FOOT, Part.HEEL, Part.TOES)) {
        body = foot(body, side, !free(contacts, side, Part.KNEE));
      }
    }
    return body;
  }

  private static boolean free(List<Contact> contacts, Side side, Part... parts) {
    List<Part> list = List.of(parts);
    return contacts.stream()
        .noneMatch(
            c ->
                list.contains(c.part())
                    && c.side().filter(side::equals).isPresent()
                    && c.manner() != Contact.Manner.HOLDING);
  }

  private static Skeleton hand(Skeleton s, Side side) {
    Skeleton body = s;
    for (int i = 0; i < ROUNDS && armDepth(body, side) > 0; i++) {
      Vec up = Vec.UP.times(Math.max(0, handDepth(body, side) + 1e-4));
      body =
          ArmSolver.reach(
              body, side, Landmarks.wrist(body, side).plus(up), body.limb(Limb.HAND, side).axes());
    }
    return body;
  }

  private static Skeleton foot(Skeleton s, Side side, boolean kneeling) {
    Skeleton body = s;
    for (int i = 0; i < ROUNDS && footDepth(body, side) > 0; i++) {
      double up = footDepth(body, side) + 1e-4;
      body = kneeling ? LegSolver.kneeBent(body, side, up) : LegSolver.lifted(body, side, up);
    }
    return body;
  }

  private static double armDepth(Skeleton s, Side side) {
    return Math.max(handDepth(s, side), elbowDepth(s, side));
  }

  /** How deep an elbow lies below the floor; not above 0 where it is clear. */
  static double elbowDepth(Skeleton s, Side side) {
    return ELBOW - Landmarks.elbow(s, side).y();
  }

  /** How deep a hand lies below the floor; not above 0 where it is clear. */
  static double handDepth(Skeleton s, Side side) {
    return Stream.of(
            .012 - Landmarks.wrist(s, side).y(),
            .010 - Landmarks.palm(s, side).y(),
            .006 - Landmarks.fingertip(s, side).y())
        .mapToDouble(depth -> depth)
        .max()
        .orElse(0);
  }

  /** How deep a foot lies below the floor; not above 0 where it is clear. */
  static double footDepth(Skeleton s, Side side) {
    return Stream.of(
            LegSolver.heelPoint(s, side), LegSolver.ballPoint(s, side), Landmarks.toe(s, side))
        .mapToDouble(point -> -point.y())
        .max()
        .orElse(0);
  }
}
