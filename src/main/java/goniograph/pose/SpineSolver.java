package goniograph.pose;

import goniograph.body.Body;
import goniograph.body.Frame;
import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Kinematics;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Movement;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/** Bends the spine where contacts ask it: the loins between hips and upper back, the neck. */
final class SpineSolver {
  private static final List<SpineJoint> NECK =
      List.of(SpineJoint.C7, SpineJoint.C5, SpineJoint.C3, SpineJoint.C0);
  private static final double MOST = 75;
  private static final Vec DOWN = new Vec(0, -1, 0);

  private SpineSolver() {}

  /**
   * The angles with the loins bent: so that hips and upper back both lie on; so that hips which
   * would sink below the upper back do not; so that a chest propped on its elbows is not too high
   * for them.
   */
  static JointAngles lying(
      Body body, Turn base, JointAngles angles, List<Contact> contacts, Touch touch) {
    Freedom loins = Freedom.of(Joint.LUMBAR, Movement.FLEXION);
    double typed = angles.get(loins);
    Optional<Gap> gap = gap(contacts, touch);
    if (gap.isEmpty()) {
      return angles;
    }
    DoubleUnaryOperator apart =
        bend ->
            gap.get()
                .between
                .applyAsDouble(
                    Kinematics.skeleton(body, base, angles.with(loins, typed + bend), Vec.ZERO));
    boolean bends = gap.get().closes || apart.applyAsDouble(0) < 0;
    return bends ? angles.with(loins, typed + root(apart)) : angles;
  }

  /**
   * What bending the loins makes 0.
   *
   * @param closes false where only what is below 0 is bent
   */
  private record Gap(ToDoubleFunction<Skeleton> between, boolean closes) {}

  private static Optional<Gap> gap(List<Contact> contacts, Touch touch) {
    Optional<Contact> hips = level(contacts, Part.HIPS, touch);
    Optional<Contact> lies = hips.or(() -> level(contacts, Part.FRONT, touch));
    Optional<Gap> propped =
        contacts.stream()
            .filter(c -> c.part().ofForearm() && !touch.upright(c) && lies.isPresent())
            .map(c -> new Gap(s -> prone(s) ? reach(s, lies.get(), c, touch) : 0, false))
            .findFirst();
    return level(contacts, Part.UPPER_BACK, touch)
        .map(
            back -> {
              Contact lowest = hips.orElse(back.on(Part.HIPS));
              return new Gap(s -> touch.gap(s, lowest) - touch.gap(s, back), hips.isPresent());
            })
        .or(() -> propped);
  }

  private static boolean prone(Skeleton s) {
    return s.pelvis().axes().x().y() < -.5;
  }

  /** How much longer the upper arm is than the way from the shoulder down to what it props on. */
  private static double reach(Skeleton s, Contact lies, Contact elbow, Touch touch) {
    double shoulder = Kinematics.shoulderCentre(s, elbow.side().orElse(Side.RIGHT), DOWN).y();
    double face = touch.face(elbow).map(f -> f.high().y()).orElse(0.0);
    double high = shoulder - touch.gap(s, lies) - face;
    return .96 * Lengths.UPPER_ARM + Touch.ELBOW - high;
  }

  private static Optional<Contact> level(List<Contact> contacts, Part part, Touch touch) {
    return contacts.stream().filter(c -> c.part() == part && !touch.upright(c)).findFirst();
  }

  /** The body with its neck bent, forward or to the side, until its head lies on. */
  static Skeleton headLaid(Skeleton s, List<Contact> contacts, Touch touch) {
    Optional<Contact> head =
        contacts.stream()
            .filter(c -> c.part() == Part.HEAD && touch.face(c).isPresent())
            .findFirst();
    return head.map(c -> headLaid(s, c, touch)).orElseGet(() -> headLifted(s, touch));
  }

  /** A head that touches nothing is bent out of what is below it. */
  private static Skeleton headLifted(Skeleton s, Touch touch) {
    double ground = touch.ground(Landmarks.head(s));
    boolean sinks = -Touch.head(s, DOWN) < ground;
    return sinks ? bentUntil(s, Vec.UP, b -> -Touch.head(b, DOWN) - ground) : s;
  }

  private static Skeleton headLaid(Skeleton s, Contact head, Touch touch) {
    Vec normal = touch.face(head).orElseThrow().normal();
    return bentUntil(s, normal, body -> touch.gap(body, head));
  }

  /** The neck bent in the plane in which the head comes nearer to a face, until a gap is closed. */
  private static Skeleton bentUntil(Skeleton s, Vec normal, ToDoubleFunction<Skeleton> gap) {
    Turn chest = s.spine(SpineJoint.T2).axes();
    boolean sideways = Math.abs(chest.z().dot(normal)) > Math.abs(chest.x().dot(normal));
    return bent(s, sideways, root(b -> gap.applyAsDouble(bent(s, sideways, b))));
  }

  /** The neck bent more, in equal shares of its joints. */
  private static Skeleton bent(Skeleton s, boolean sideways, double degrees) {
    Map<SpineJoint, Frame> joints = new EnumMap<>(SpineJoint.class);
    double share = degrees / NECK.size();
    Turn more = sideways ? Turn.aboutX(share) : Turn.aboutZ(-share);
    Frame was = s.spine(SpineJoint.T2);
    Frame now = was;
    for (SpineJoint joint : NECK) {
      Frame old = s.spine(joint);
      Vec step = was.axes().invert(old.origin().minus(was.origin()));
      Turn own = was.axes().inverse().then(old.axes());
      now = new Frame(now.point(step), now.axes().then(sideways ? own.then(more) : more.then(own)));
      joints.put(joint, now);
      was = old;
    }
    return s.with(joints);
  }

  /** Where a function of degrees is 0, by secants from 0 on; 0 where it has no such place near. */
  private static double root(DoubleUnaryOperator f) {
    double before = 0;
    double fBefore = f.applyAsDouble(before);
    double at = fBefore == 0 ? 0 : 2;
    for (int i = 0; i < 20; i++) {
      double here = f.applyAsDouble(at);
      if (Math.abs(here) < 1e-11) {
        return at;
      }
      double slope = (here - fBefore) / (at - before);
      if (!(Math.abs(slope) > 1e-9)) {
        return at;
      }
      double next = Math.max(-MOST, Math.min(MOST, at - here / slope));
      if (next == at) {
        return at;
      }
      before = at;
      fBefore = here;
      at = next;
    }
    return at;
  }
}
