package goniograph.pose;

import goniograph.body.JointAngles;
import goniograph.body.Kinematics;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Solves one frame of a pose after another: the body by its joint angles, then placed by the
 * contacts that carry it, then feet, arms, head, then free limbs lifted from what is below. The
 * first frame decides where supports stand and where parts touch; the others keep to that.
 */
final class FrameSolver {
  private final PoseFile pose;
  private final Pins pins = new Pins();
  private final RootPlacer root;
  private @Nullable Room room;

  FrameSolver(PoseFile pose) {
    this.pose = pose;
    this.root = new RootPlacer(pose, pins);
  }

  /** The body with these angles and contacts. */
  Skeleton solve(JointAngles angles, List<Contact> contacts) {
    Skeleton typed = skeleton(angles);
    boolean first = room == null;
    Touch below = new Touch(first ? Room.around(pose, typed) : room());
    JointAngles lying = SpineSolver.lying(pose.body(), pose.base().turn(), angles, contacts, below);
    Skeleton bent = lying == angles ? typed : skeleton(lying);
    Skeleton placed = root.place(bent, contacts, below, first);
    Skeleton planted = planted(new Clearance(below).feet(placed, contacts), contacts, below);
    if (first) {
      room = Room.around(pose, planted);
    }
    Touch touch = new Touch(room());
    Skeleton laid = new Forearms(touch).lay(planted, contacts);
    Skeleton touching = new Hands(touch, pins).lay(laid, contacts);
    Skeleton held = new BallGrip(pose, touch).close(touching, contacts);
    return new Clearance(touch).clear(SpineSolver.headLaid(held, contacts, touch), contacts);
  }

  private Skeleton skeleton(JointAngles angles) {
    return Kinematics.skeleton(pose.body(), pose.base().turn(), angles, Vec.ZERO);
  }

  /** The feet planted, and the body brought up to what a knee touches ahead. */
  private Skeleton planted(Skeleton s, List<Contact> contacts, Touch touch) {
    Optional<Contact> carrier = RootPlacer.carrier(contacts, touch);
    boolean carried = carrier.isEmpty() || carrier.get().part() == Part.FOOT;
    Feet feet = new Feet(pose.balanced(), pins, touch);
    Skeleton body = s;
    Skeleton planted = feet.plant(body, contacts, carried);
    for (Contact c : room == null ? List.<Contact>of() : contacts) {
      if (c.part() == Part.KNEE && touch.upright(c)) {
        for (int i = 0; i < 12 && Math.abs(touch.gap(planted, c)) > 1e-5; i++) {
          Vec normal = touch.face(c).orElseThrow().normal();
          body = body.moved(normal.times(-1.5 * touch.gap(planted, c)));
          planted = feet.plant(body, contacts, carried);
        }
      }
    }
    return planted;
  }

  /** The supports; solve a frame first. */
  Room room() {
    if (room == null) {
      throw new IllegalStateException("no frame was solved");
    }
    return room;
  }

  Pins pins() {
    return pins;
  }
}
