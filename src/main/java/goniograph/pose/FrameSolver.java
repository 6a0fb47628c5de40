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
 * contact that carries it, then feet, then hands, then free limbs lifted from the floor. The first
 * frame decides where supports stand and where parts touch; the others keep to that.
 */
final class FrameSolver {
  private final PoseFile pose;
  private final Pins pins = new Pins();
  private final RootPlacer root;
  private final Feet feet;
  private @Nullable Room room;

  FrameSolver(PoseFile pose) {
    this.pose = pose;
    this.root = new RootPlacer(pose, pins);
    this.feet = new Feet(pose, pins);
  }

  /** The body with these angles and contacts. */
  Skeleton solve(JointAngles angles, List<Contact> contacts) {
    Skeleton typed = Kinematics.skeleton(pose.body(), pose.base().turn(), angles, Vec.ZERO);
    Skeleton placed = root.place(typed, contacts);
    Skeleton planted = feet.plant(placed, contacts, carriedByFeet(contacts));
    Skeleton laid = new Hands(room(planted), pins).lay(planted, contacts);
    return Clearance.clear(laid, contacts);
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

  private Room room(Skeleton start) {
    if (room == null) {
      room = Room.around(pose, start);
    }
    return room;
  }

  private boolean carriedByFeet(List<Contact> contacts) {
    Optional<Contact> carrier = root.carrier(contacts);
    return carrier.isEmpty() || carrier.get().part() == Part.FOOT;
  }
}
