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

  /** A heel or ball this near to where it was planted has not moved: less than .1 cm. */
  private static final double STILL = .00055;

  /** A leg that is straight. */
  private static final double STRAIGHT = (Lengths.THIGH + Lengths.SHANK) * (1 - 1e-8);

  /** How far apart the ankles are of feet that lie on one another. */
  static final double STACKED = .045;

  private final boolean balance;
  private final Pins pins;
  private final Touch touch;

  /**
   * Feet.
   *
   * @param balance true where the body shall shift over its feet
   */
  Feet(boolean balance, Pins pins, Touch touch) {
    this.balance = balance;
    this.pins = pins;
    this.touch = touch;
  }

  private record Planted(Skeleton skeleton, double miss) {}

  /**
   * The body with its feet planted. Where the feet carry the body and one is out of reach, the body
   * comes down until it is not.
   *
   * @param carried true where the feet carry the body
   */
  Skeleton plant(Skeleton s, List<Contact> contacts, boolean carried) {
    List<Contact> feet = contacts.stream().filter(c -> touches(c) && !kneels(c, contacts)).toList();
    feet.forEach(c -> keep(carried ? s : swung(s, c), c));
    Skeleton body = carried ? s.moved(Vec.UP.times(rise(s, feet))) : s;
    Planted planted = carried ? settled(body, feet) : all(body, feet);
    Skeleton stands =
        carried && balance && !feet.isEmpty() ? balanced(planted.skeleton, feet) : planted.skeleton;
    return kneeling(stands, contacts);
  }

  private boolean touches(Contact c) {
    return c.part().ofFoot() && (touch.face(c).isPresent() || c.otherFoot().isPresent());
  }

  /** True for the foot of a leg that kneels: its toes lie behind the knee. */
  private boolean kneels(Contact foot, List<Contact> contacts) {
    return foot.side().stream()
        .flatMap(side -> Touch.of(contacts, side, Part.KNEE).stream())
        .anyMatch(knee -> !touch.upright(knee));
  }

  /** Knees bent until what is lowest of the foot lies on. */
  private Skeleton kneeling(Skeleton s, List<Contact> contacts) {
    Skeleton body = s;
    for (Contact c : contacts) {
      if (touches(c) && kneels(c, contacts) && c.otherFoot().isEmpty()) {
        body = kneeling(body, side(c), touch.face(c).orElseThrow());
      }
    }
    return body;
  }

  private static Skeleton kneeling(Skeleton s, Side side, Surface face) {
    Skeleton body = s;
    for (int i = 0; i < 20; i++) {
      double up = face.high().y() - Clearance.lowestOfFoot(body, side);
      if (Math.abs(up) < 1e-6) {
        return body;
      }
      body = LegSolver.kneeBent(body, side, up);
    }
    return body;
  }

  /**
   * How far the body rises so that one leg is as long as typed, from its hip to where its foot is
   * planted, and none is shorter than typed; not so far that a leg is too short.
   */
  private double rise(Skeleton s, List<Contact> feet) {
    List<Contact> standing =
        feet.stream()
            .filter(c -> c.part() != Part.HEEL && c.manner() != Contact.Manner.SLIDES_ON)
            .filter(c -> touch.face(c).filter(Surface::level).isPresent())
            .toList();
    double typed = standing.stream().mapToDouble(c -> rise(s, c, typed(s, c))).max().orElse(0);
    return standing.stream()
        .filter(c -> c.part() == Part.FOOT)
        .mapToDouble(c -> rise(s, c, STRAIGHT))
        .reduce(typed, Math::min);
  }

  /** From the hip to what a leg stands on: its ankle, or the middle of its ball. */
  private static double typed(Skeleton s, Contact c) {
    Vec hip = Landmarks.hip(s, side(c));
    Vec end = c.part() == Part.TOES ? LegSolver.ball(s, side(c)) : Landmarks.ankle(s, side(c));
    return end.minus(hip).length();
  }

  /** How far the body rises so that a leg is so long, from its hip to where its foot is planted. */
  private double rise(Skeleton s, Contact contact, double length) {
    Vec hip = Landmarks.hip(s, side(contact));
    Vec way = pin(s, contact).point().minus(hip);
    double across = way.x() * way.x() + way.z() * way.z();
    double top = touch.face(contact).orElseThrow().high().y();
    double end = contact.part() == Part.TOES ? LegSolver.BALL_RADIUS : Lengths.ANKLE;
    return top + end + Math.sqrt(Math.max(0, length * length - across)) - hip.y();
  }

  private Pins.Pin pin(Skeleton s, Contact contact) {
    return pins.find(contact)
        .orElseGet(() -> new Pins.Pin(Touch.anchor(s, contact), Touch.heading(s, contact)));
  }

  private void keep(Skeleton s, Contact contact) {
    Vec point = ballOfFlatFoot(contact).orElseGet(() -> Touch.anchor(s, contact));
    Vec within = touch.within(contact, point);
    Vec kept = contact.otherFoot().map(foot -> stacked(s, foot, point)).orElse(within);
    pins.keep(contact, kept, Touch.heading(s, contact));
  }

  /** Where the ankle of a foot is that lies on the other, from that one's ankle. */
  private static Vec stacked(Skeleton s, Side other, Vec ankle) {
    return ankle.minus(Landmarks.ankle(s, other)).unit().times(STACKED);
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
    Optional<Side> other = contact.otherFoot();
    if (other.isPresent()) {
      Vec ankle = Landmarks.ankle(s, other.get()).plus(pin(s, contact).point());
      return LegSolver.ankleAt(s, side(contact), ankle);
    }
    Surface face = touch.face(contact).orElseThrow();
    return contact.manner() == Contact.Manner.SLIDES_ON
        ? sliding(s, contact, face)
        : planted(s, contact, face);
  }

  private static LegSolver.Bent sliding(Skeleton s, Contact contact, Surface face) {
    return switch (contact.part()) {
      case HEEL -> LegSolver.heelSliding(s, side(contact), face);
      case TOES -> LegSolver.ballSliding(s, side(contact), face);
      default -> LegSolver.flatSliding(s, side(contact), face);
    };
  }

  /** A leg that hangs on a lying or sitting body comes down on heel or ball as it is bent. */
  private Skeleton swung(Skeleton s, Contact c) {
    boolean swings = c.part() != Part.FOOT && c.otherFoot().isEmpty();
    return swings ? sliding(s, c, touch.face(c).orElseThrow()).skeleton() : s;
  }

  private LegSolver.Bent planted(Skeleton s, Contact contact, Surface face) {
    Side side = side(contact);
    Pins.Pin pin = pin(s, contact);
    Vec at = Touch.foot(face, pin.point());
    if (contact.part() != Part.FOOT) {
      LegSolver.Bent typed = sliding(s, contact, face);
      Vec now = Touch.anchor(typed.skeleton(), contact);
      if (typed.miss() < CLOSE && now.minus(at).length() < STILL) {
        return typed;
      }
    }
    return switch (contact.part()) {
      case HEEL -> LegSolver.onHeel(s, side, at, face.normal());
      case TOES -> LegSolver.onBall(s, side, at, face.normal());
      default -> LegSolver.flat(s, side, at, pin.heading(), face.normal());
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
      boolean tiptoe = feet.stream().allMatch(c -> c.part() == Part.TOES);
      Skeleton moved = body.moved(level.times(.9));
      body = settled(tiptoe ? moved.moved(Vec.UP.times(rise(moved, feet))) : moved, feet).skeleton;
    }
    return body;
  }

  /** The feet planted, the body brought down as far as one is out of reach. */
  private Planted settled(Skeleton s, List<Contact> feet) {
    Planted planted = all(s, feet);
    Skeleton body = s;
    for (int i = 0; planted.miss > CLOSE && i < 8; i++) {
      body = body.moved(new Vec(0, -1.05 * planted.miss, 0));
      planted = all(body, feet);
    }
    return planted;
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
