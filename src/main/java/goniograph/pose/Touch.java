package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.TrunkSection;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;

/** The faces that parts touch, how far parts reach, and how far they are from their faces. */
final class Touch {
  /** The elbow's and the wrist's radius: how high their centres lie when they rest on a face. */
  static final double ELBOW = .0235;

  static final double WRIST = .0165;

  /** The lower shoulder of someone lying on a side, flattened by the body's weight. */
  private static final double SHOULDER = .036 - Outline.COMPRESSION;

  private static final double THIGH_RADIUS = .040;

  private final Room room;

  Touch(Room room) {
    this.room = room;
  }

  /** The face of a support that a contact is with: a back's upright one, else the upper one. */
  Optional<Surface> face(Contact contact) {
    return room.find(contact.target())
        .flatMap(p -> leans(contact) ? p.upright().or(p::level) : p.level().or(p::upright));
  }

  /** As {@link #face(Contact)}; of several faces the arm's nearest; also the thigh's upper side. */
  Optional<Surface> face(Skeleton s, Contact contact) {
    if (contact.thigh().isPresent()) {
      return contact.thigh().map(side -> thigh(s, side));
    }
    return contact.part().ofArm() ? room.face(contact.target(), anchor(s, contact)) : face(contact);
  }

  /** The plane on which a forearm or an elbow lies on a thigh, near the knee. */
  private static Surface thigh(Skeleton s, Side side) {
    Frame thigh = s.limb(Limb.THIGH, side);
    Vec on = thigh.point(THIGH_RADIUS, -.8 * Lengths.THIGH, 0);
    return new Surface(on, on, thigh.axes().x());
  }

  private static boolean leans(Contact contact) {
    return contact.part() == Part.BACK || contact.part() == Part.UPPER_BACK;
  }

  /** The point of a step or another small face nearest to one; floors and mats are wide enough. */
  Vec within(Contact contact, Vec point) {
    return room.find(contact.target())
        .filter(p -> !p.kind().under() && p.kind() != SupportKind.FLOOR)
        .flatMap(p -> face(contact))
        .map(face -> point.plus(face.nearest(foot(face, point), 0).minus(foot(face, point))))
        .orElse(point);
  }

  /** True where what is touched stands upright: a wall, or a chair behind the back. */
  boolean upright(Contact contact) {
    return face(contact).filter(face -> !face.level()).isPresent();
  }

  /** The face that lies under a point and carries a body: a mat's, a bed's, else the floor's. */
  double ground(Vec point) {
    double ground = 0;
    for (Placed placed : room.all()) {
      if (placed.kind().under() && !placed.kind().lies()) {
        Optional<Surface> level = placed.level().filter(face -> over(face, point));
        ground = Math.max(ground, level.map(face -> face.high().y()).orElse(0.0));
      }
    }
    return ground;
  }

  private static boolean over(Surface face, Vec p) {
    return p.x() >= face.low().x()
        && p.x() <= face.high().x()
        && p.z() >= face.low().z()
        && p.z() <= face.high().z();
  }

  /** How far a point lies out of a face, along its normal. */
  static double out(Surface face, Vec point) {
    return point.minus(face.low()).dot(face.normal());
  }

  /** The point of a face's plane right below another, along its normal. */
  static Vec foot(Surface face, Vec point) {
    return point.minus(face.normal().times(out(face, point)));
  }

  /** The place of a face nearest to a point of its plane; a thigh's plane has no edges. */
  static Vec place(Surface face, Vec point, double inset) {
    return face.low().equals(face.high()) ? point : face.nearest(point, inset);
  }

  /**
   * A point turned about a centre in the direction it lies, until it is so far out of a face; the
   * nearest such turn where the face is out of reach.
   */
  static Vec swung(Vec centre, Vec point, Surface face, double out) {
    Vec n = face.normal();
    Vec way = point.minus(centre);
    double rise = Math.max(-way.length(), Math.min(way.length(), out - out(face, centre)));
    double across = Math.sqrt(Math.max(0, way.dot(way) - rise * rise));
    Vec along = way.minus(n.times(way.dot(n))).unit();
    return centre.plus(along.times(across)).plus(n.times(rise));
  }

  /** How far a part is out of its face, negative inside; 0 where there is no face. */
  double gap(Skeleton s, Contact contact) {
    return face(s, contact).map(face -> gap(s, contact, face)).orElse(0.0);
  }

  static double gap(Skeleton s, Contact contact, Surface face) {
    double flesh = face.level() || !soft(contact.part()) ? 0 : Outline.COMPRESSION;
    return -reach(s, contact, face.normal().times(-1)) - flesh - face.low().dot(face.normal());
  }

  /** Flesh gives way under weight, not where it leans against something upright. */
  private static boolean soft(Part part) {
    return part.ofTrunk() || part == Part.HEAD;
  }

  /** How far a part reaches in a direction of length 1, as a height along it. */
  static double reach(Skeleton s, Contact contact, Vec d) {
    Side side = contact.side().orElse(Side.RIGHT);
    return switch (contact.part()) {
      case HIPS -> Outline.hips(s, d) - Outline.COMPRESSION;
      case UPPER_BACK -> Outline.trunk(s, d, Outline.upperBack()) - Outline.COMPRESSION;
      case BACK, FRONT, SIDE ->
          Math.max(Outline.hips(s, d), Outline.trunk(s, d, TrunkSection.ALL)) - Outline.COMPRESSION;
      case HEAD -> head(s, d);
      case KNEE -> Landmarks.knee(s, side).dot(d) + Lengths.KNEELING_KNEE;
      case FOOT, HEEL, TOES -> Landmarks.ankle(s, side).dot(d) + Lengths.ANKLE;
      case HAND, FINGERTIPS -> Landmarks.palm(s, side).dot(d);
      case FOREARM, ELBOW -> Landmarks.elbow(s, side).dot(d) + ELBOW;
    };
  }

  /** The skull as an ellipsoid, flattened where it rests. */
  static double head(Skeleton s, Vec direction) {
    Turn axes = s.spine(SpineJoint.C0).axes();
    Vec d = axes.invert(direction);
    Vec half = Lengths.SKULL;
    Vec stretched = new Vec(d.x() * half.x(), d.y() * half.y(), d.z() * half.z());
    return Landmarks.head(s).dot(direction) + stretched.length() - Outline.COMPRESSION;
  }

  /** How far the shoulders reach in a direction of length 1. */
  static double shoulders(Skeleton s, Vec d) {
    return Math.max(
            Landmarks.shoulder(s, Side.LEFT).dot(d), Landmarks.shoulder(s, Side.RIGHT).dot(d))
        + SHOULDER;
  }

  /** The point of a part that stays where it is. */
  static Vec anchor(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    return switch (contact.part()) {
      case KNEE -> Landmarks.knee(s, side);
      case HEEL -> LegSolver.heelPoint(s, side);
      case TOES -> LegSolver.toesPoint(s, side);
      case FOOT -> Landmarks.ankle(s, side);
      case HAND -> Landmarks.palm(s, side);
      case FINGERTIPS -> Landmarks.fingertip(s, side);
      case FOREARM, ELBOW -> Landmarks.elbow(s, side);
      case HEAD -> Landmarks.head(s);
      case HIPS -> s.pelvis().origin();
      case BACK, UPPER_BACK, FRONT, SIDE -> s.spine(SpineJoint.T5).origin();
    };
  }

  /** The joint of an arm that comes to lie over a face: of a hand the wrist, which bends. */
  static Vec rest(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    return contact.part().ofHand() ? Landmarks.wrist(s, side) : Landmarks.elbow(s, side);
  }

  /** How high that joint comes to lie. */
  static double height(Part part) {
    return switch (part) {
      case HAND -> Hands.HALF_PALM;
      case FINGERTIPS -> Hands.TIP_HEIGHT;
      default -> ELBOW;
    };
  }

  /** Where toes or fingers of a part point, or where the pelvis faces. */
  static Vec heading(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    return contact.part().ofFoot()
        ? s.limb(Limb.FOOT, side).axes().x()
        : contact.part().ofArm()
            ? s.limb(Limb.HAND, side).axes().y().times(-1)
            : s.pelvis().axes().x();
  }

  /** The contacts of one side with any of these parts. */
  static List<Contact> of(List<Contact> contacts, Side side, Part... parts) {
    List<Part> list = List.of(parts);
    return contacts.stream()
        .filter(c -> list.contains(c.part()) && c.side().filter(side::equals).isPresent())
        .filter(c -> c.manner() != Contact.Manner.HOLDING)
        .toList();
  }
}
