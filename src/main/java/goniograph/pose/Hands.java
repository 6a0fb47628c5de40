package goniograph.pose;

import goniograph.body.Fingers;
import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** Lays every hand that has a contact on its support: flat, or on its fingertips. */
final class Hands {
  /** Half the thickness of a palm. */
  static final double HALF_PALM = .011;

  /** How steeply the fingers come down when only their tips touch. */
  private static final double STEEP = 45;

  /** How high the wrist then stands over the tips, roughly. */
  static final double TIP_HEIGHT = .07;

  /** How far a palm and a fingertip keep from a worktop's edge. */
  private static final double PALM_INSET = .035;

  private static final double TIP_INSET = .020;

  /** On a thigh: part of the way to the knee, and distance of the palm from its axis. */
  private static final double THIGH_PART = .70;

  static final double THIGH_HEIGHT = .055;

  /** How far a hand on a thigh lies towards the outside. */
  private static final double THIGH_ROLL = 25;

  private static final double THIGH_CURL = 10;
  private static final double HAND_CURL = 25;

  /** How far apart the middles are of a hand and another that lies on its back. */
  static final double ON_HAND = 2 * HALF_PALM;

  private static final double TIP_CURL = 14;

  /** Half the thickness of a gathered band or a rail, cm; the house's own. */
  private static final double BAND_GRIP = 1.4;

  /** The part of the thigh nearest to the hip on which a hand can lie. */
  private static final double THIGH_NEAREST = .25;

  private final Touch touch;
  private final Pins pins;

  Hands(Touch touch, Pins pins) {
    this.touch = touch;
    this.pins = pins;
  }

  /** Where a hand shall be: the wrist and the hand's axes. */
  private record Goal(Vec wrist, Turn axes) {}

  /** The body with its hands laid; a hand whose forearm lies keeps its wrist's place. */
  Skeleton lay(Skeleton s, List<Contact> contacts) {
    Skeleton body = s;
    for (Contact contact : otherHandLast(contacts)) {
      if (contact.part().ofHand()) {
        body = laid(body, contact, contacts);
      }
    }
    return body;
  }

  private Skeleton laid(Skeleton s, Contact contact, List<Contact> contacts) {
    Side side = contact.side().orElse(Side.RIGHT);
    if (contact.manner() == Contact.Manner.HOLDING) {
      return gripping(s, side, contact.target());
    }
    boolean lies = !Touch.of(contacts, side, Part.FOREARM).isEmpty();
    return lies ? flattened(s, side, contact) : lay(s, side, contact);
  }

  /** Fingers that nobody bent close round what they hold. */
  private static Skeleton gripping(Skeleton s, Side side, String thing) {
    double cm = ThingKind.of(thing).map(ThingKind::gripCm).orElse(BAND_GRIP);
    boolean typed = !s.fingers(side).equals(Fingers.REST);
    return typed ? s : s.with(side, Fingers.round(s.body().fraction(cm)));
  }

  private static List<Contact> otherHandLast(List<Contact> contacts) {
    return contacts.stream()
        .sorted(Comparator.comparing(contact -> contact.otherHand().isPresent()))
        .toList();
  }

  private Skeleton lay(Skeleton s, Side side, Contact contact) {
    if (contact.thigh().isPresent()) {
      return reach(s.withCurl(side, THIGH_CURL), side, onThigh(s, side, contact.thigh().get()));
    }
    if (contact.otherHand().isPresent()) {
      return reach(s.withCurl(side, HAND_CURL), side, onHand(s, side));
    }
    Optional<Surface> face = touch.face(s, contact);
    if (face.isEmpty()) {
      return s;
    }
    boolean tips = contact.part() == Part.FINGERTIPS;
    Skeleton shaped = s.withCurl(side, tips ? TIP_CURL : 0);
    Goal goal =
        tips ? onTips(shaped, side, face.get(), contact) : flat(shaped, side, face.get(), contact);
    return reach(shaped, side, goal);
  }

  private Skeleton reach(Skeleton s, Side side, Goal goal) {
    double ground = touch.ground(Landmarks.elbow(s, side));
    return ArmSolver.reach(s, side, goal.wrist, goal.axes, ground);
  }

  /** The hand of a lying forearm turned flat. */
  private Skeleton flattened(Skeleton s, Side side, Contact contact) {
    return touch
        .face(s, contact)
        .map(face -> axes(down(fingers(s, side, face), face.normal()), face.normal(), side))
        .map(axes -> ArmSolver.handTurned(s.withCurl(side, 0), side, axes))
        .orElse(s);
  }

  /** From the wrist of a lying forearm down to the palm. */
  private static Vec down(Vec fingers, Vec normal) {
    double slope = (Touch.WRIST - HALF_PALM) / Lengths.PALM;
    return fingers.times(Math.sqrt(1 - slope * slope)).minus(normal.times(slope));
  }

  /**
   * On the thigh's upper outer side, where the forearm need not turn to its end; nearer to the hip
   * than usual where the arm is too short.
   */
  private static Goal onThigh(Skeleton s, Side side, Side thigh) {
    return inReach(s, side, part -> onThigh(s, side, thigh, part), THIGH_PART, THIGH_NEAREST);
  }

  /** The usual place, or the one nearest to it that is in reach on the way to another. */
  private static Goal inReach(
      Skeleton s, Side side, DoubleFunction<Goal> places, double usual, double nearest) {
    double far = usual;
    double near = nearest;
    if (inReach(s, side, places.apply(far))) {
      return places.apply(far);
    }
    for (int i = 0; i < 30; i++) {
      double middle = (near + far) / 2;
      boolean reached = inReach(s, side, places.apply(middle));
      near = reached ? middle : near;
      far = reached ? far : middle;
    }
    return places.apply(near);
  }

  private static boolean inReach(Skeleton s, Side side, Goal goal) {
    double way = goal.wrist.minus(Landmarks.shoulder(s, side)).length();
    return way < (Lengths.UPPER_ARM + Lengths.FOREARM) * .999;
  }

  private static Goal onThigh(Skeleton s, Side side, Side below, double part) {
    Frame thigh = s.limb(Limb.THIGH, below);
    double roll = Math.toRadians(THIGH_ROLL);
    Vec front = thigh.axes().x().times(Math.cos(roll));
    Vec outward = front.plus(thigh.axes().z().times(side.sign() * Math.sin(roll)));
    Vec axis = thigh.point(0, -part * Lengths.THIGH, 0);
    return goal(axis.plus(outward.times(THIGH_HEIGHT)), thigh.axes().y().times(-1), outward, side);
  }

  /** Across the back of the other hand, nearer to its wrist where the arm is too short. */
  private static Goal onHand(Skeleton s, Side side) {
    return inReach(s, side, along -> onHand(s, side, along), Lengths.PALM, 0);
  }

  private static Goal onHand(Skeleton s, Side side, double along) {
    Frame other = s.limb(Limb.HAND, side.other());
    Vec back = other.axes().z().times(side.other().sign());
    Vec palm = other.point(0, -along, 0).plus(back.times(ON_HAND));
    Vec apart = Landmarks.shoulder(s, side.other()).minus(Landmarks.shoulder(s, side));
    double way = other.axes().x().dot(apart) < 0 ? -1 : 1;
    return goal(palm, other.axes().x().times(way), back, side);
  }

  private Goal flat(Skeleton s, Side side, Surface surface, Contact contact) {
    Vec fingers = fingers(s, side, surface);
    Vec palm = raised(s, typedPalm(s, side, surface, contact, fingers), contact);
    Vec reached = within(s, side, surface, palm, fingers);
    Pins.Pin pin = pin(contact, surface.nearest(reached, PALM_INSET), fingers);
    Vec place = within(s, side, surface, pin.point(), pin.heading());
    Vec middle = surface.nearest(place, 0).plus(surface.normal().times(HALF_PALM));
    return goal(middle, pin.heading(), surface.normal(), side);
  }

  /**
   * Where the palm is as typed: on a level face ahead of the wrist, which bends; of a hand that
   * slides, as far from the shoulder as typed.
   */
  private static Vec typedPalm(Skeleton s, Side side, Surface face, Contact contact, Vec fingers) {
    Vec wrist = Landmarks.wrist(s, side);
    Vec ahead = fingers.times(Lengths.PALM);
    if (contact.manner() == Contact.Manner.SLIDES_ON) {
      return Touch.swung(Landmarks.shoulder(s, side), wrist, face, HALF_PALM).plus(ahead);
    }
    return face.level() ? wrist.plus(ahead) : Landmarks.palm(s, side);
  }

  /** The palm's place; a hand that is out of reach slides along its face as far as it must. */
  private static Vec within(Skeleton s, Side side, Surface face, Vec palm, Vec fingers) {
    Vec shoulder = Landmarks.shoulder(s, side);
    Vec wrist = palm.minus(fingers.times(Lengths.PALM));
    double high = Touch.out(face, shoulder) - HALF_PALM;
    double arm = (Lengths.UPPER_ARM + Lengths.FOREARM) * .999;
    Vec way = along(wrist.minus(shoulder), face.normal());
    double most = Math.sqrt(Math.max(0, arm * arm - high * high));
    double excess = Math.max(0, way.length() - most);
    return palm.minus(way.unit().times(excess));
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

  static Vec along(Vec v, Vec normal) {
    return v.minus(normal.times(v.dot(normal)));
  }

  private static Goal goal(Vec palm, Vec fingers, Vec normal, Side side) {
    return new Goal(palm.minus(fingers.times(Lengths.PALM)), axes(fingers, normal, side));
  }

  /** A hand whose fingers point along {@code fingers} and whose back faces {@code outward}. */
  static Turn axes(Vec fingers, Vec outward, Side side) {
    Vec y = fingers.times(-1);
    Vec z = along(outward, fingers).unit().times(side.sign());
    return new Turn(y.cross(z), y, z);
  }
}
