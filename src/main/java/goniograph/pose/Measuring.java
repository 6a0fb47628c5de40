package goniograph.pose;

import goniograph.body.BearingPatch;
import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.TrunkSection;
import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Measures on the solved body how well its contacts are kept, apart from how they were solved. */
final class Measuring {
  private final PoseFile pose;
  private final Room room;
  private final Pins pins;

  Measuring(PoseFile pose, Room room, Pins pins) {
    this.pose = pose;
    this.room = room;
    this.pins = pins;
  }

  /** Every contact with its miss; held things are never missed. */
  List<ContactMiss> misses(Skeleton s, List<Contact> contacts) {
    return contacts.stream()
        .filter(c -> c.manner() != Contact.Manner.HOLDING)
        .map(c -> new ContactMiss(c, pose.body().cm(miss(s, c))))
        .toList();
  }

  private double miss(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    double y = pose.height(contact);
    return switch (contact.part()) {
      case FOOT -> farthest(BearingPatch.sole(s, side), y);
      case HEEL -> Math.abs(LegSolver.heelPoint(s, side).y() - y);
      case TOES -> Math.abs(LegSolver.ballPoint(s, side).y() - y);
      case HAND, FINGERTIPS -> hand(s, side, contact);
      default ->
          upright(contact)
              .map(face -> gap(s, face))
              .orElseGet(() -> Math.abs(RootPlacer.lowest(s, contact) - y));
    };
  }

  private static double farthest(List<Vec> points, double y) {
    return points.stream().mapToDouble(p -> Math.abs(p.y() - y)).max().orElse(0);
  }

  private double hand(Skeleton s, Side side, Contact contact) {
    Vec palm = Landmarks.palm(s, side);
    if (contact.target().equals("thighs")) {
      Frame thigh = s.limb(Limb.THIGH, side);
      double along = -thigh.axes().invert(palm.minus(thigh.origin())).y();
      Vec axis = thigh.point(0, -Math.max(0, Math.min(Lengths.THIGH, along)), 0);
      return Math.abs(palm.minus(axis).length() - Hands.THIGH_HEIGHT);
    }
    boolean tips = contact.part() == Part.FINGERTIPS;
    Vec point = tips ? Landmarks.fingertip(s, side) : palm;
    return room.face(contact.target(), palm)
        .map(face -> point.minus(face.nearest(point, 0)).length())
        .map(gap -> Math.abs(gap - (tips ? 0 : Hands.HALF_PALM)))
        .orElse(0.0);
  }

  private Optional<Surface> upright(Contact contact) {
    boolean back = contact.part() == Part.BACK || contact.part() == Part.UPPER_BACK;
    return back ? room.find(contact.target()).flatMap(Placed::upright) : Optional.empty();
  }

  private static double gap(Skeleton s, Surface face) {
    Vec towards = face.normal().times(-1);
    double reach = Math.max(Outline.hips(s, towards), Outline.trunk(s, towards, TrunkSection.ALL));
    return Math.abs(reach - face.low().dot(towards));
  }

  /** How far the farthest planted foot is, over the ground, from where it was planted; in cm. */
  double slipCm(Skeleton s, List<Contact> contacts) {
    return contacts.stream()
        .filter(c -> c.part().ofFoot() && c.manner() != Contact.Manner.SLIDES_ON)
        .mapToDouble(
            c -> pins.find(c).map(pin -> level(Feet.point(s, c).minus(pin.point()))).orElse(0.0))
        .map(pose.body()::cm)
        .max()
        .orElse(0);
  }

  private static double level(Vec v) {
    return Math.hypot(v.x(), v.z());
  }

  /** A part and how deep it lies below the floor, in cm. */
  record Depth(String part, double cm) {}

  /** The part that lies deepest below the floor; its depth is 0 where none does. */
  Depth deepest(Skeleton s) {
    Vec down = new Vec(0, -1, 0);
    Stream<Depth> trunk =
        Stream.of(
            new Depth("hips", Outline.hips(s, down) - Outline.COMPRESSION),
            new Depth("trunk", Outline.trunk(s, down, TrunkSection.ALL) - Outline.COMPRESSION),
            new Depth("head", Lengths.SKULL.y() - Landmarks.head(s).y() - Outline.COMPRESSION));
    Stream<Depth> limbs =
        Stream.of(Side.values())
            .flatMap(
                side ->
                    Stream.of(
                        new Depth("hand", Clearance.handDepth(s, side)),
                        new Depth("elbow", Clearance.elbowDepth(s, side)),
                        new Depth("knee", Lengths.KNEELING_KNEE - Landmarks.knee(s, side).y()),
                        new Depth("foot", Clearance.footDepth(s, side))));
    return Stream.concat(trunk, limbs)
        .map(depth -> new Depth(depth.part, pose.body().cm(depth.cm)))
        .filter(depth -> depth.cm > .01)
        .reduce(new Depth("", 0), (a, b) -> b.cm > a.cm ? b : a);
  }

  /** How a foot stands over what is below it. */
  FootState foot(Skeleton s, Side side, List<Contact> contacts) {
    double below =
        contacts.stream()
            .filter(c -> c.part().ofFoot() && c.side().filter(side::equals).isPresent())
            .mapToDouble(pose::height)
            .findFirst()
            .orElse(0);
    double heel = pose.body().cm(LegSolver.heelPoint(s, side).y() - below);
    double ball = pose.body().cm(LegSolver.ballPoint(s, side).y() - below);
    if (Math.min(heel, ball) > 1) {
      return FootState.OFF;
    }
    if (heel > 1) {
      return FootState.HEEL_RAISED;
    }
    return ball > 1 ? FootState.FOREFOOT_RAISED : FootState.FLAT;
  }
}
