package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;

/**
 * Places the whole body by the first contact that can carry it: its height so that the part touches
 * what is below, its place on the ground so that the part is where it was before.
 */
final class RootPlacer {
  private static final Vec DOWN = new Vec(0, -1, 0);

  private final PoseFile pose;
  private final Pins pins;

  RootPlacer(PoseFile pose, Pins pins) {
    this.pose = pose;
    this.pins = pins;
  }

  /** The contact that carries the body, where there is one. */
  Optional<Contact> carrier(List<Contact> contacts) {
    return contacts.stream()
        .filter(contact -> contact.part().root() && !upright(contact))
        .findFirst();
  }

  /** True where what is touched stands upright: a wall, or a chair behind the back. */
  private boolean upright(Contact contact) {
    boolean back = contact.part() == Part.BACK || contact.part() == Part.UPPER_BACK;
    return contact.target().equals(SupportKind.WALL.word())
        || (back && contact.target().equals(SupportKind.CHAIR.word()));
  }

  /** The body where its contacts put it; without a carrier, its soles on the floor. */
  Skeleton place(Skeleton s, List<Contact> contacts) {
    Optional<Contact> carrier = carrier(contacts);
    if (carrier.isEmpty()) {
      double lowest = -Outline.trunkAndLegs(s, DOWN);
      return s.moved(Vec.UP.times(-lowest));
    }
    List<Contact> carrying = alike(carrier.get(), contacts);
    double up = carrying.stream().mapToDouble(c -> pose.height(c) - lowest(s, c)).max().orElse(0);
    return anchored(s.moved(Vec.UP.times(up)), carrying);
  }

  private static List<Contact> alike(Contact carrier, List<Contact> contacts) {
    return contacts.stream().filter(c -> c.part() == carrier.part()).toList();
  }

  /** The lowest point of the part of a contact, where it touches. */
  static double lowest(Skeleton s, Contact contact) {
    return switch (contact.part()) {
      case KNEE -> Landmarks.knee(s, side(contact)).y() - Lengths.KNEELING_KNEE;
      case FOOT, HEEL, TOES -> Landmarks.ankle(s, side(contact)).y() - Lengths.ANKLE;
      case HIPS -> -Outline.hips(s, DOWN) + Outline.COMPRESSION;
      case UPPER_BACK -> trunk(s, Outline.upperBack());
      default -> Math.min(-Outline.hips(s, DOWN) + Outline.COMPRESSION, trunk(s, TrunkSection.ALL));
    };
  }

  private static double trunk(Skeleton s, List<TrunkSection> sections) {
    return -Outline.trunk(s, DOWN, sections) + Outline.COMPRESSION;
  }

  private static Side side(Contact contact) {
    return contact.side().orElse(Side.RIGHT);
  }

  private Skeleton anchored(Skeleton s, List<Contact> carrying) {
    carrying.forEach(c -> pins.keep(c, anchor(s, c), s.pelvis().axes().x()));
    Vec way =
        carrying.stream()
            .map(c -> pins.find(c).map(pin -> pin.point().minus(anchor(s, c))).orElse(Vec.ZERO))
            .reduce(Vec.ZERO, Vec::plus)
            .times(1.0 / carrying.size());
    return s.moved(new Vec(way.x(), 0, way.z()));
  }

  /** The point of a part that stays where it is. */
  static Vec anchor(Skeleton s, Contact contact) {
    return switch (contact.part()) {
      case KNEE -> Landmarks.knee(s, side(contact));
      case FOOT, HEEL, TOES -> Landmarks.ankle(s, side(contact));
      case HIPS -> s.pelvis().origin();
      default -> s.spine(SpineJoint.T5).origin();
    };
  }
}
