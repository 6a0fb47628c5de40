package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.List;

/** Lays every forearm and elbow that has a contact on its face. */
final class Forearms {
  /** How far the wrist lies deeper than the elbow when both touch. */
  private static final double SLOPE = (Touch.ELBOW - Touch.WRIST) / Lengths.FOREARM;

  /** How far an elbow keeps from an edge. */
  static final double INSET = .02;

  private final Touch touch;

  Forearms(Touch touch) {
    this.touch = touch;
  }

  /** The body with its forearms and elbows laid. */
  Skeleton lay(Skeleton s, List<Contact> contacts) {
    Skeleton body = s;
    for (Contact contact : contacts) {
      if (contact.part().ofForearm() && contact.manner() != Contact.Manner.HOLDING) {
        body = lay(body, contact);
      }
    }
    return body;
  }

  private Skeleton lay(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    return touch.face(s, contact).map(face -> lay(s, contact.part(), side, face)).orElse(s);
  }

  private static Skeleton lay(Skeleton s, Part part, Side side, Surface face) {
    Skeleton on = ArmSolver.elbowOn(s, side, face, Touch.ELBOW, INSET);
    return part == Part.ELBOW
        ? on
        : ArmSolver.forearmAlong(on, side, along(on, side, face.normal()));
  }

  /** As the forearm lies over the face, its wrist down on it. */
  private static Vec along(Skeleton s, Side side, Vec normal) {
    Vec typed = Landmarks.wrist(s, side).minus(Landmarks.elbow(s, side)).unit();
    Vec over = Hands.along(typed, normal);
    Vec level = over.length() > .2 ? over : Hands.along(ahead(s, side), normal);
    return level.unit().times(Math.sqrt(1 - SLOPE * SLOPE)).minus(normal.times(SLOPE));
  }

  /** Where the front of an arm faces whose forearm stands on its face like a post. */
  private static Vec ahead(Skeleton s, Side side) {
    Frame upper = s.limb(Limb.UPPER_ARM, side);
    return upper.axes().x();
  }
}
