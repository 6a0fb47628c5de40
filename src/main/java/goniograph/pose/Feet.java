package goniograph.pose;

import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.MassPoint;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.List;
import java.util.Optional;

/** Sets every foot that has a contact where the contact wants it, and the body over the feet. */
final class Feet {
  /** A flat foot's middle ahead of the ankle, over which a balanced body stands. */
  private static final double MIDDLE = .035;

  private static final double CLOSE = 1e-4;

  private final PoseFile pose;
  private final Pins pins;

  Feet(PoseFile pose, Pins pins) {
    this.pose = pose;
    this.pins = pins;
  }

  private record Planted(Skeleton skeleton, double miss) {}

  /**
   * The body with its feet planted. Where the feet carry the body and one is out of reach, the body
   * comes down until it is not.
   *
   * @param carried true where the feet carry the body
   */
  Skeleton plant(Skeleton s, List<Contact> contacts, boolean carried) {
    List<Contact> feet = contacts.stream().filter(c -> c.part().ofFoot()).toList();
    feet.forEach(c -> keep(s, c));
    Skeleton body = carried ? s.moved(Vec.UP.times(rise(s, feet))) : s;
    Planted planted = all(body, feet);
    for (int i = 0; carried && planted.miss > CLOSE && i < 8; i++) {
      body = body.moved(new Vec(0, -1.05 * planted.miss, 0));
      planted = all(body, feet);
    }
    return carried && pose.balanced() && !feet.isEmpty()
        ? balanced(planted.skeleton, feet)
        : planted.skeleton;
  }

  /**
   * How far the body rises so that one leg is as long as typed, from its hip to where its foot is
   * planted, and none is shorter than typed.
   */
  private double rise(Skeleton s, List<Contact> feet) {
    return feet.stream()
        .filter(c -> c.part() != Part.HEEL && c.manner() != Contact.Manner.SLIDES_ON)
        .mapToDouble(c -> c.part() == Part.TOES ? tiptoe(s, c) : rise(s, c))
        .max()
        .orElse(0);
  }

  private double rise(Skeleton s, Contact contact) {
    Vec hip = Landmarks.hip(s, side(contact));
    double typed = point(s, contact).minus(hip).length();
    Vec way = pin(s, contact).point().minus(hip);
    double across = way.x() * way.x() + way.z() * way.z();
    double ankle = pose.height(contact) + Lengths.ANKLE;
    return ankle + Math.sqrt(Math.max(0, typed * typed - across)) - hip.y();
  }

  /** As {@link #rise} for a leg that stands on its ball, from its hip to the middle of the ball. */
  private double tiptoe(Skeleton s, Contact contact) {
    Vec hip = Landmarks.hip(s, side(contact));
    double typed = LegSolver.ball(s, side(contact)).minus(hip).length();
    Vec way = pin(s, contact).point().minus(hip);
    double across = way.x() * way.x() + way.z() * way.z();
    double middle = pose.height(contact) + LegSolver.BALL_RADIUS;
    return middle + Math.sqrt(Math.max(0, typed * typed - across)) - hip.y();
  }

  private Pins.Pin pin(Skeleton s, Contact contact) {
    return pins.find(contact)
        .orElseGet(
            () -> new Pins.Pin(point(s, contact), s.limb(Limb.FOOT, side(contact)).axes().x()));
  }

  private void keep(Skeleton s, Contact contact) {
    Vec heading = s.limb(Limb.FOOT, side(contact)).axes().x();
    pins.keep(contact, ballOfFlatFoot(contact).orElseGet(() -> point(s, contact)), heading);
  }

  /** Where the ball is of a foot that stood flat before it rose onto its ball. */
  private Optional<Vec> ballOfFlatFoot(Contact contact) {
    return contact.part() == Part.TOES
        ? pins.find(contact.on(Part.FOOT))
            .map(pin -> pin.point().plus(level(pin.heading()).times(Lengths.BALL)))
        : Optional.empty();
  }

  private static Vec level(Vec v) {
    return new Vec(v.x(), 0, v.z()).unit();
  }

  private static Side side(Contact contact) {
    return contact.side().orElse(Side.RIGHT);
  }

  /** The point of a foot that a contact holds: ankle, heel or ball. */
  static Vec point(Skeleton s, Contact contact) {
    Side side = side(contact);
    return switch (contact.part()) {
      case HEEL -> LegSolver.heelPoint(s, side);
      case TOES -> LegSolver.ballPoint(s, side);
      default -> Landmarks.ankle(s, side);
    };
  }

  private Planted all(Skeleton s, List<Contact> feet) {
    Skeleton body = s;
    double miss = 0;
    for (Contact contact : feet) {
      LegSolver.Bent bent = one(body, contact);
      body = bent.skeleton();
      miss = Math.max(miss, bent.miss());
    }
    return new Planted(body, miss);
  }

  private LegSolver.Bent one(Skeleton s, Contact contact) {
    Side side = side(contact);
    double y = pose.height(contact);
    if (contact.manner() == Contact.Manner.SLIDES_ON) {
      Skeleton slid =
          contact.part() == Part.HEEL
              ? LegSolver.heelSliding(s, side, y)
              : LegSolver.flatSliding(s, side, y);
      return new LegSolver.Bent(slid, 0);
    }
    Pins.Pin pin = pin(s, contact);
    Vec at = new Vec(pin.point().x(), y, pin.point().z());
    return switch (contact.part()) {
      case HEEL -> LegSolver.onHeel(s, side, at);
      case TOES -> LegSolver.onBall(s, side, at);
      default -> LegSolver.flat(s, side, at.plus(Vec.UP.times(Lengths.ANKLE)), pin.heading());
    };
  }

  private Skeleton balanced(Skeleton s, List<Contact> feet) {
    Skeleton body = s;
    for (int i = 0; i < 12; i++) {
      Vec shift = over(body, feet).minus(MassPoint.centreOfMass(MassPoint.of(body)));
      Vec level = new Vec(shift.x(), 0, shift.z());
      if (body.body().cm(level.length()) < .3) {
        return body;
      }
      body = settled(body.moved(level.times(.9)), feet);
    }
    return body;
  }

  private Skeleton settled(Skeleton s, List<Contact> feet) {
    boolean tiptoe = feet.stream().allMatch(c -> c.part() == Part.TOES);
    Planted planted = all(tiptoe ? s.moved(Vec.UP.times(rise(s, feet))) : s, feet);
    for (int i = 0; planted.miss > CLOSE && i < 8; i++) {
      planted = all(planted.skeleton.moved(new Vec(0, -1.05 * planted.miss, 0)), feet);
    }
    return planted.skeleton;
  }

  private static Vec over(Skeleton s, List<Contact> feet) {
    return feet.stream()
        .map(c -> bearing(s, c))
        .reduce(Vec.ZERO, Vec::plus)
        .times(1.0 / feet.size());
  }

  private static Vec bearing(Skeleton s, Contact contact) {
    return contact.part() == Part.TOES
        ? LegSolver.ball(s, side(contact))
        : s.limb(Limb.FOOT, side(contact)).point(MIDDLE, 0, 0);
  }
}
