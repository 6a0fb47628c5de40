package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Lays every hand that has a contact on its support: flat, or on its fingertips. */
final class Hands {
  /** Half the thickness of a palm. */
  static final double HALF_PALM = .011;

  /** How steeply the fingers come down when only their tips touch. */
  private static final double STEEP = 45;

  /** How far a palm and a fingertip keep from a worktop's edge. */
  private static final double PALM_INSET = .035;

  private static final double TIP_INSET = .020;

  /** On a thigh: part of the way to the knee, and distance of the palm from its axis. */
  private static final double THIGH_PART = .70;

  static final double THIGH_HEIGHT = .055;

  /** How far a hand on a thigh lies towards the outside. */
  private static final double THIGH_ROLL = 25;

  private static final double THIGH_CURL = 10;
  private static final double TIP_CURL = 14;

  private final Room room;
  private final Pins pins;

  Hands(Room room, Pins pins) {
    this.room = room;
    this.pins = pins;
  }

  /** Where a hand shall be: the wrist and the hand's axes. */
  private record Goal(Vec wrist, Turn axes) {}

  /** The body with its hands laid. */
  Skeleton lay(Skeleton s, List<Contact> contacts) {
    Skeleton body = s;
    for (Contact contact : contacts) {
      if (contact.part().ofHand() && contact.manner() != Contact.Manner.HOLDING) {
        body = lay(body, contact);
      }
    }
    return body;
  }

  private Skeleton lay(Skeleton s, Contact contact) {
    Side side = contact.side().orElse(Side.RIGHT);
    if (contact.target().equals("thighs")) {
      Goal goal = onThigh(s, side);
      return ArmSolver.reach(s.withCurl(side, THIGH_CURL), side, goal.wrist, goal.axes);
    }
    Optional<Surface> surface = room.face(contact.target(), Landmarks.palm(s, side));
    if (surface.isEmpty()) {
      return s;
    }
    boolean tips = contact.part() == Part.FINGERTIPS;
    Skeleton shaped = s.withCurl(side, tips ? TIP_CURL : 0);
    Goal goal =
        tips
            ? onTips(shaped, side, surface.get(), contact)
            : flat(shaped, side, surface.get(), contact);
    return ArmSolver.reach(shaped, side, goal.wrist, goal.axes);
  }

  /** On the thigh's upper outer side, where the forearm need not turn to its end. */
  private static Goal onThigh(Skeleton s, Side side) {
    Frame thigh = s.limb(Limb.THIGH, side);
    double roll = Math.toRadians(THIGH_ROLL);
    Vec outward =
        thigh
            .axes()
            .x()
            .times(Math.cos(roll))
            .plus(thigh.axes().z().times(side.sign() * Math.sin(roll)));
    Vec axis = thigh.point(0, -THIGH_PART * Lengths.THIGH, 0);
    Vec palm = axis.plus(outward.times(THIGH_HEIGHT));
    return goal(palm, thigh.axes().y().times(-1), outward, side);
  }

  private Goal flat(Skeleton s, Side side, Surface surface, Contact contact) {
    Vec fingers = fingers(s, side, surface);
    Vec palm = raised(s, Landmarks.palm(s, side), contact);
    Pins.Pin pin = pin(contact, surface.nearest(palm, PALM_INSET), fingers);
    Vec middle = pin.point().plus(surface.normal().times(HALF_PALM));
    return goal(middle, pin.heading(), surface.normal(), side);
  }

  private Goal onTips(Skeleton s, Side side, Surface surface, Contact contact) {
    Vec tip = raised(s, Landmarks.fingertip(s, side), contact);
    Pins.Pin pin = pin(contact, surface.nearest(tip, TIP_INSET), fingers(s, side, surface));
    double steep = Math.toRadians(STEEP);
    Vec down = pin.heading().times(Math.cos(steep)).minus(surface.normal().times(Math.sin(steep)));
    Turn axes = axes(down, surface.normal(), side);
    Frame hand = new Frame(Vec.ZERO, axes);
    Vec reach = Landmarks.fingertip(s.with(side, Map.of(Limb.HAND, hand)), side);
    return new Goal(pin.point().minus(reach), axes);
  }

  private Pins.Pin pin(Contact contact, Vec point, Vec heading) {
    pins.keep(contact, point, heading);
    return pins.find(contact).orElseGet(() -> new Pins.Pin(point, heading));
  }

  private static Vec raised(Skeleton s, Vec point, Contact contact) {
    double y = contact.heightCm().map(cm -> s.body().fraction(cm)).orElse(point.y());
    return new Vec(point.x(), y, point.z());
  }

  /** Where the fingers point along a surface: as typed, else away from the feet or ahead. */
  private static Vec fingers(Skeleton s, Side side, Surface surface) {
    Vec typed = along(s.limb(Limb.HAND, side).axes().y().times(-1), surface.normal());
    if (typed.length() > .3) {
      return typed.unit();
    }
    Turn chest = s.spine(SpineJoint.T5).axes();
    Vec other = surface.level() && chest.y().y() > .7 ? chest.x() : chest.y();
    return along(surface.level() ? other : Vec.UP, surface.normal()).unit();
  }

  private static Vec along(Vec v, Vec normal) {
    return v.minus(normal.times(v.dot(normal)));
  }

  private static Goal goal(Vec palm, Vec fingers, Vec normal, Side side) {
    return new Goal(palm.minus(fingers.times(Lengths.PALM)), axes(fingers, normal, side));
  }

  /** A hand whose fingers point along {@code fingers} and whose back faces {@code outward}. */
  private static Turn axes(Vec fingers, Vec outward, Side side) {
    Vec y = fingers.times(-1);
    Vec z = along(outward, fingers).unit().times(side.sign());
    return new Turn(y.cross(z), y, z);
  }
}
