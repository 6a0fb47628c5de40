package goniograph.pose;

import goniograph.body.BearingPatch;
import goniograph.body.Landmarks;
import goniograph.body.MassPoint;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.SupportPolygon;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The base of support of a solved body and how far inside it the centre of mass lies. */
final class Bearing {
  private final Room room;

  Bearing(Room room) {
    this.room = room;
  }

  /** The margin in cm; negative outside, empty where nothing bears. */
  Optional<Double> marginCm(Skeleton s, List<Contact> contacts, Predicate<Contact> counted) {
    List<Vec> points =
        contacts.stream()
            .filter(counted.and(this::bears))
            .flatMap(c -> patch(s, c).stream())
            .toList();
    return points.isEmpty()
        ? Optional.empty()
        : Optional.of(
            s.body()
                .cm(SupportPolygon.around(points).margin(MassPoint.centreOfMass(MassPoint.of(s)))));
  }

  /** Walls, thighs and held things add no area. */
  private boolean bears(Contact contact) {
    return contact.manner() != Contact.Manner.HOLDING
        && room.find(contact.target()).flatMap(Placed::level).isPresent();
  }

  private static List<Vec> patch(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    return switch (contact.part()) {
      case FOOT -> BearingPatch.sole(s, side);
      case HEEL -> BearingPatch.heel(s, side);
      case TOES -> BearingPatch.forefoot(s, side);
      case KNEE -> BearingPatch.knee(s, side);
      case HAND -> BearingPatch.palm(s, side);
      case FINGERTIPS -> List.of(Landmarks.fingertip(s, side));
      case ELBOW -> List.of(Landmarks.elbow(s, side));
      case FOREARM -> BearingPatch.forearm(s, side);
      case HEAD -> List.of(Landmarks.head(s));
      case HIPS -> upright(s) ? BearingPatch.seat(s) : hips(s);
      case UPPER_BACK -> BearingPatch.trunk(s, Outline.upperBack());
      case BACK, FRONT -> BearingPatch.trunk(s, TrunkSection.ALL);
      case SIDE -> BearingPatch.side(s);
    };
  }

  private static boolean upright(Skeleton s) {
    return s.pelvis().axes().y().y() > .5;
  }

  private static List<Vec> hips(Skeleton s) {
    return BearingPatch.trunk(
        s,
        TrunkSection.ALL.stream()
            .filter(section -> section.joint().filter(j -> j != SpineJoint.L3).isEmpty())
            .toList());
  }
}
