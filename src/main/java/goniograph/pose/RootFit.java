package goniograph.pose;

import goniograph.body.BasePosture;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * Shifts, pitches and rolls the whole body until all contacts that compete for it are met as well
 * as may be, by damped least squares. What carries the body counts most; arms and legs that can
 * bend count as much as they would have to leave their typed angles; the typed trunk counts a
 * little.
 *
 * <p>The trunk may pitch where nothing says how the pelvis lies: on hands and knees, leaning on a
 * table, lying on a side, and lying on the upper back with planted feet. Then the hips keep their
 * typed angles and the pelvis is solved. A body that sits keeps its pelvis and its hips are solved.
 */
final class RootFit {
  /** Weights: body heights for lengths, radians for turns. */
  private static final double HARD = 30;

  private static final double LEG = 10;
  private static final double ARM = 1;
  private static final double PINNED = .3;

  /** The part of an arm's length that it readily reaches. */
  private static final double REACH = .94;

  private static final double FIRM = 1000;

  private static final Vec DOWN = new Vec(0, -1, 0);

  private final BasePosture base;
  private final Pins pins;
  private final Touch touch;
  private final boolean first;

  /** As for {@link RootPlacer#place}. */
  RootFit(BasePosture base, Pins pins, Touch touch, boolean first) {
    this.base = base;
    this.pins = pins;
    this.touch = touch;
    this.first = first;
  }

  /**
   * The body where the contacts together put it.
   *
   * @param s the body placed by the carrying contacts alone
   */
  Skeleton fit(Skeleton s, List<Contact> contacts, List<Contact> carrying) {
    List<ToDoubleFunction<Skeleton>> terms = competing(s, contacts, carrying);
    if (terms.isEmpty()) {
      return s;
    }
    carrying.forEach(c -> carrier(c, terms));
    List<Way> ways = ways(s, contacts, carrying);
    UnaryOperator<Skeleton> settled = body -> RootPlacer.settled(body, carrying, pins, touch);
    double[] q = LeastSquares.solve(ways.size(), at -> residuals(at, ways, s, terms, settled));
    return settled.apply(moved(s, ways, q));
  }

  /** How the whole body may move, and how much it counts that it keeps its typed place. */
  private enum Way {
    AHEAD(.02),
    ASIDE(.02),
    /** Radians, forward about the axis to the right. */
    PITCH(.15),
    /** Radians, about the axis ahead. */
    ROLL(.15);

    private final double weight;

    Way(double weight) {
      this.weight = weight;
    }
  }

  /** A body on trunk or knees stays in its place; one on its feet may shift over them. */
  private List<Way> ways(Skeleton s, List<Contact> contacts, List<Contact> carrying) {
    List<Way> ways = new ArrayList<>();
    if (carrying.get(0).part() == Part.FOOT) {
      ways.add(Way.AHEAD);
      ways.add(Way.ASIDE);
    }
    if (pitches(s, contacts, carrying)) {
      ways.add(Way.PITCH);
    }
    if (base == BasePosture.HANDS_AND_KNEES) {
      ways.add(Way.ROLL);
    }
    return ways;
  }

  private static double[] residuals(
      double[] q,
      List<Way> ways,
      Skeleton s,
      List<ToDoubleFunction<Skeleton>> terms,
      UnaryOperator<Skeleton> settled) {
    Skeleton body = settled.apply(moved(s, ways, q));
    double[] r = new double[terms.size() + q.length];
    for (int i = 0; i < terms.size(); i++) {
      r[i] = terms.get(i).applyAsDouble(body);
    }
    for (int i = 0; i < q.length; i++) {
      r[terms.size() + i] = ways.get(i).weight * q[i];
    }
    return r;
  }

  private static Skeleton moved(Skeleton s, List<Way> ways, double[] q) {
    Turn turn = Turn.NONE;
    Vec shift = Vec.ZERO;
    for (int i = 0; i < q.length; i++) {
      switch (ways.get(i)) {
        case AHEAD -> shift = shift.plus(new Vec(q[i], 0, 0));
        case ASIDE -> shift = shift.plus(new Vec(0, 0, q[i]));
        case PITCH -> turn = Turn.aboutZ(Math.toDegrees(q[i]));
        case ROLL -> turn = Turn.aboutX(Math.toDegrees(q[i])).then(turn);
      }
    }
    return s.turned(turn, s.pelvis().origin(), shift);
  }

  /** What carriers want: to touch, and to stay; planted feet bend their legs to stay. */
  private void carrier(Contact c, List<ToDoubleFunction<Skeleton>> terms) {
    terms.add(s -> HARD * touch.gap(s, c));
    pins.find(c).ifPresent(pin -> stays(c, pin.point(), c.part().ofFoot() ? PINNED : HARD, terms));
  }

  private static void stays(
      Contact c, Vec pin, double weight, List<ToDoubleFunction<Skeleton>> terms) {
    terms.add(s -> weight * (Touch.anchor(s, c).x() - pin.x()));
    terms.add(s -> weight * (Touch.anchor(s, c).z() - pin.z()));
  }

  /** What the contacts beside the carrying ones want. */
  private List<ToDoubleFunction<Skeleton>> competing(
      Skeleton s, List<Contact> contacts, List<Contact> carrying) {
    List<ToDoubleFunction<Skeleton>> terms = new ArrayList<>();
    for (Contact c : contacts) {
      if (c.manner() != Contact.Manner.HOLDING && !carrying.contains(c)) {
        root(c, terms);
        arm(s, c, carrying, terms);
        leg(c, contacts, carrying, terms);
      }
    }
    if (carrying.get(0).part() == Part.SIDE) {
      touch.face(carrying.get(0)).ifPresent(face -> shoulder(face, terms));
    }
    return terms;
  }

  private static void shoulder(Surface face, List<ToDoubleFunction<Skeleton>> terms) {
    terms.add(s -> HARD * (-Touch.shoulders(s, DOWN) - face.high().y()));
  }

  /** Other parts of trunk and thighs touch too; a wall gets its place from the first frame. */
  private void root(Contact c, List<ToDoubleFunction<Skeleton>> terms) {
    boolean trunk = c.part().ofTrunk() || c.part() == Part.KNEE;
    if (trunk && touch.face(c).isPresent() && !(first && touch.upright(c)) && !flexed(c)) {
      terms.add(s -> HARD * touch.gap(s, c));
    }
  }

  /** True where a joint is solved for this contact, and not the whole body moved. */
  private boolean flexed(Contact c) {
    return c.part() == Part.UPPER_BACK && !touch.upright(c)
        || c.part() == Part.KNEE && touch.upright(c);
  }

  private void arm(
      Skeleton s, Contact c, List<Contact> carrying, List<ToDoubleFunction<Skeleton>> terms) {
    boolean wall = c.part().ofForearm() && touch.upright(c) && !first;
    if (c.part().ofArm() && (wall || leans(s, carrying)) && touch.face(s, c).isPresent()) {
      Surface face = touch.face(s, c).orElseThrow();
      if (base == BasePosture.LEANING) {
        terms.add(b -> ARM * Math.max(0, tooFar(b, c, face)));
        return;
      }
      terms.add(b -> ARM * (Touch.out(face, Touch.rest(b, c)) - Touch.height(c.part())));
      if (!wall) {
        pins.find(c).ifPresent(pin -> restsAt(c, pin, terms));
      }
    }
  }

  /** How much too far a shoulder is from the nearest place of a face for its arm to touch it. */
  private static double tooFar(Skeleton s, Contact c, Surface face) {
    double arm = Lengths.UPPER_ARM + (c.part().ofHand() ? Lengths.FOREARM : 0);
    Vec shoulder = Landmarks.shoulder(s, c.side().orElse(Side.RIGHT));
    Vec place = face.nearest(Touch.foot(face, shoulder), Forearms.INSET);
    Vec rest = place.plus(face.normal().times(Touch.height(c.part())));
    return rest.minus(shoulder).length() - REACH * arm;
  }

  private static void restsAt(Contact c, Pins.Pin pin, List<ToDoubleFunction<Skeleton>> terms) {
    double back = c.part() == Part.HAND ? Lengths.PALM : 0;
    Vec at = pin.point().minus(pin.heading().times(back));
    terms.add(s -> PINNED * (Touch.rest(s, c).x() - at.x()));
    terms.add(s -> PINNED * (Touch.rest(s, c).z() - at.z()));
  }

  /** True where the arms bear part of the body's weight. */
  private boolean leans(Skeleton s, List<Contact> carrying) {
    boolean kneels = carrying.get(0).part() == Part.KNEE;
    return base == BasePosture.LEANING || kneels && s.pelvis().axes().y().y() < .7;
  }

  /**
   * A planted foot pulls at the knee of a hip that keeps its angle; hips keep off what is below.
   */
  private void leg(
      Contact c,
      List<Contact> contacts,
      List<Contact> carrying,
      List<ToDoubleFunction<Skeleton>> terms) {
    Optional<Pins.Pin> pin = pins.find(c);
    if (c.part() == Part.FOOT
        && pin.isPresent()
        && touch.face(c).isPresent()
        && bridges(contacts, carrying)) {
      Side side = c.side().orElse(Side.RIGHT);
      Surface face = touch.face(c).orElseThrow();
      Vec ankle = Touch.foot(face, pin.get().point()).plus(face.normal().times(Lengths.ANKLE));
      terms.add(s -> LEG * (Landmarks.knee(s, side).minus(ankle).length() - Lengths.SHANK));
      terms.add(
          s -> {
            double hips = -Outline.hips(s, DOWN) + Outline.COMPRESSION;
            return FIRM * Math.min(0, hips - touch.ground(s.pelvis().origin()));
          });
    }
  }

  private static boolean bridges(List<Contact> contacts, List<Contact> carrying) {
    return carrying.get(0).part() == Part.UPPER_BACK
        && contacts.stream().noneMatch(c -> c.part() == Part.HIPS);
  }

  private boolean pitches(Skeleton s, List<Contact> contacts, List<Contact> carrying) {
    return leans(s, carrying) || bridges(contacts, carrying) || carrying.get(0).part() == Part.SIDE;
  }
}
