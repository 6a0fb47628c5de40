package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.Arrays;
import java.util.List;

/** Lays both palms on a ball that both hands hold; its middle is that of the typed palms. */
final class BallGrip {
  private final PoseFile pose;
  private final Touch touch;

  BallGrip(PoseFile pose, Touch touch) {
    this.pose = pose;
    this.touch = touch;
  }

  /** The body with its palms on the ball, where there is one between them. */
  Skeleton close(Skeleton s, List<Contact> contacts) {
    return pose.props().stream()
        .filter(ThingWish.class::isInstance)
        .map(ThingWish.class::cast)
        .filter(t -> t.kind() == ThingKind.BALL && t.place() == HeldAt.HANDS)
        .filter(ball -> Arrays.stream(Side.values()).allMatch(side -> holds(contacts, side, ball)))
        .findFirst()
        .map(ball -> close(s, s.body().fraction(ball.sizeCm()) / 2))
        .orElse(s);
  }

  private static boolean holds(List<Contact> contacts, Side side, ThingWish ball) {
    return contacts.stream()
        .filter(c -> c.manner() == Contact.Manner.HOLDING && c.target().equals(ball.word()))
        .anyMatch(c -> c.side().filter(side::equals).isPresent());
  }

  private Skeleton close(Skeleton s, double radius) {
    Vec left = Landmarks.palm(s, Side.LEFT);
    Vec right = Landmarks.palm(s, Side.RIGHT);
    Vec across = right.minus(left).unit();
    Vec centre = left.towards(right, .5);
    Skeleton body = s;
    for (Side side : Side.values()) {
      Vec outward = across.times(side.sign());
      Vec palm = centre.plus(outward.times(radius + Hands.HALF_PALM));
      body = laid(body, side, palm, outward);
    }
    return body;
  }

  private Skeleton laid(Skeleton s, Side side, Vec palm, Vec outward) {
    Vec typed = s.limb(Limb.HAND, side).axes().y().times(-1);
    Vec fingers = typed.minus(outward.times(typed.dot(outward))).unit();
    Vec wrist = palm.minus(fingers.times(Lengths.PALM));
    double ground = touch.ground(Landmarks.elbow(s, side));
    return ArmSolver.reach(s, side, wrist, Hands.axes(fingers, outward, side), ground);
  }
}
