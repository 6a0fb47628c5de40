package goniograph.figure;

import goniograph.body.BasePosture;
import goniograph.body.Body;
import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Kinematics;
import goniograph.body.Landmarks;
import goniograph.body.Movement;
import goniograph.body.Posture;
import goniograph.body.Reading;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import goniograph.figure.Move.What;
import goniograph.figure.PoseTelling.Sides;
import goniograph.pose.Moment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds what a patient would see move between two moments: head and trunk apart, a limb by its
 * largest movement, hip and knee or shoulder and elbow in one where they go together, both sides in
 * one where they do the same.
 */
final class Moves {
  /** A change of less than this is not told, degrees. */
  static final double TOLD = 8;

  /** A centimetre of the shoulder girdle or chin counts as this many degrees. */
  private static final double CM = 4;

  /** The whole body goes up or down where the pelvis does by more, cm. */
  private static final double RISE_CM = 5;

  /** A foot has stepped where the feet are farther apart or nearer by more, cm. */
  private static final double STEP_CM = 10;

  /** Beside the largest movement of a joint, one of less than this share is not told. */
  private static final double SHARE = .6;

  /** A leg is seen as straight up to this much extension of its hip, degrees. */
  private static final double LEG_STRAIGHT = 15;

  private static final int MOST = 4;

  private static final Skeleton NEUTRAL =
      Kinematics.skeleton(Body.ADULT, Turn.NONE, JointAngles.NONE, Vec.ZERO);

  private final BasePosture base;
  private final Skeleton before;
  private final Skeleton after;
  private final JointAngles from;
  private final JointAngles to;
  private final List<Move> moves = new ArrayList<>();

  private Moves(BasePosture base, Skeleton before, Skeleton after) {
    this.base = base;
    this.before = before;
    this.after = after;
    this.from = Reading.of(before, base.turn());
    this.to = Reading.of(after, base.turn());
  }

  /** What moves between two key frames. */
  static List<Move> between(BasePosture base, Moment before, Moment after) {
    Moves moves = new Moves(base, before.skeleton(), after.skeleton());
    moves.rise();
    moves.trunk();
    moves.feet(before, after);
    for (Side side : Side.values()) {
      moves.leg(side, Resting.leg(before, side), Resting.leg(after, side));
      moves.arm(side, Resting.arm(before, side).least(Resting.arm(after, side)));
    }
    if (!Resting.head(before) || !Resting.head(after)) {
      moves.head();
    }
    return moves.told();
  }

  /**
   * How a pose differs from its base posture: what the name of the posture does not tell. Where a
   * hand or foot touches, that tells enough.
   *
   * @param plain the body in the base posture
   */
  static List<Move> taken(BasePosture base, Skeleton plain, Moment pose) {
    Moves moves = new Moves(base, plain, pose.skeleton());
    if (PoseTelling.upright(base)) {
      moves.trunk();
    }
    for (Side side : Side.values()) {
      Resting leg = Resting.leg(pose, side);
      if (base == BasePosture.STANDING || leg == Resting.NOTHING) {
        moves.leg(side, leg, leg);
      }
      moves.arm(side, Resting.arm(pose, side));
    }
    if (!Resting.head(pose)) {
      moves.head();
    }
    moves.moves.removeIf(move -> move.size() < 2 * TOLD);
    return moves.told();
  }

  private void rise() {
    double cm = after.body().cm(after.pelvis().origin().y() - before.pelvis().origin().y());
    if (Math.abs(cm) > RISE_CM) {
      What what = PoseTelling.upright(base) ? What.BODY_RISE : What.HIPS_RISE;
      moves.add(
          new Move(what, cm > 0 ? Move.Way.MORE : Move.Way.BACK, Sides.MIDLINE, CM * Math.abs(cm)));
    }
  }

  private void trunk() {
    if (PoseTelling.upright(base)) {
      middle(What.TRUNK_LEAN, Posture.lean(before), Posture.lean(after));
    } else {
      middle(
          What.PELVIS_TILT,
          sum(from, Movement.TILT, Joint.PELVIS),
          sum(to, Movement.TILT, Joint.PELVIS));
    }
    double leant = moves.isEmpty() ? 0 : moves.get(moves.size() - 1).size();
    double round =
        sum(to, Movement.FLEXION, Joint.LUMBAR, Joint.THORACIC)
            - sum(from, Movement.FLEXION, Joint.LUMBAR, Joint.THORACIC);
    if (Math.abs(round) > SHARE * leant) { // a back that rounds a little as it leans just leans
      middle(What.TRUNK_ROUND, Movement.FLEXION, Joint.LUMBAR, Joint.THORACIC);
    }
    middle(What.TRUNK_BEND, Movement.BEND, Joint.PELVIS, Joint.LUMBAR, Joint.THORACIC);
    middle(What.TRUNK_TURN, Movement.TURN, Joint.PELVIS, Joint.LUMBAR, Joint.THORACIC);
  }

  /** A head that keeps looking ahead while the trunk leans does not nod, whatever its neck does. */
  private void head() {
    double before = sum(from, Movement.FLEXION, Joint.NECK, Joint.HEAD);
    double after = sum(to, Movement.FLEXION, Joint.NECK, Joint.HEAD);
    if (bowed() * Math.signum(after - before) > TOLD) {
      middle(What.HEAD_NOD, before, after);
    }
    middle(What.HEAD_BEND, Movement.BEND, Joint.NECK, Joint.HEAD);
    middle(What.HEAD_TURN, Movement.TURN, Joint.NECK, Joint.HEAD);
    move(What.HEAD_TUCK, Sides.MIDLINE, drawnIn(this.before), drawnIn(this.after), CM)
        .ifPresent(moves::add);
  }

  /** How far the face has turned to the floor, degrees. */
  private double bowed() {
    return pitch(before) - pitch(after);
  }

  private static double pitch(Skeleton s) {
    Vec face = s.spine(SpineJoint.C0).axes().x();
    return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, face.y()))));
  }

  /** How far the head is drawn back from where a straight neck has it, cm; 0 where it nods. */
  private static double drawnIn(Skeleton s) {
    JointAngles angles = Reading.of(s, Turn.NONE);
    double neck = angles.get(Joint.NECK, Movement.FLEXION);
    double head = angles.get(Joint.HEAD, Movement.FLEXION);
    if (neck * head >= 0 || Math.abs(neck + head) > TOLD) {
      return 0;
    }
    Vec rest = NEUTRAL.spine(SpineJoint.T2).axes().invert(forward(NEUTRAL));
    Vec now = s.spine(SpineJoint.T2).axes().invert(forward(s));
    return s.body().cm(rest.x() - now.x());
  }

  private static Vec forward(Skeleton s) {
    return s.spine(SpineJoint.C0).origin().minus(s.spine(SpineJoint.T2).origin());
  }

  private void middle(What what, Movement movement, Joint... joints) {
    middle(what, sum(from, movement, joints), sum(to, movement, joints));
  }

  private void middle(What what, double fromValue, double toValue) {
    move(what, Sides.MIDLINE, fromValue, toValue, 1).ifPresent(moves::add);
  }

  private static double sum(JointAngles angles, Movement movement, Joint... joints) {
    double sum = 0;
    for (Joint joint : joints) {
      sum += angles.get(joint, movement);
    }
    return sum;
  }

  /** Of two planted feet one has stepped. */
  private void feet(Moment was, Moment is) {
    boolean planted =
        Arrays.stream(Side.values())
            .allMatch(side -> Resting.leg(was, side).planted() && Resting.leg(is, side).planted());
    double cm = apart(after) - apart(before);
    if (planted && Math.abs(cm) > STEP_CM) {
      Move.Way way = cm > 0 ? Move.Way.MORE : Move.Way.BACK;
      moves.add(new Move(What.FEET_APART, way, Sides.MIDLINE, CM * Math.abs(cm)));
    }
  }

  private static double apart(Skeleton s) {
    Vec way = Landmarks.ankle(s, Side.RIGHT).minus(Landmarks.ankle(s, Side.LEFT));
    return s.body().cm(Math.hypot(way.x(), way.z()));
  }

  /** A planted leg swings its body, not itself: of its hip only the bend is told. */
  private void leg(Side side, Resting was, Resting is) {
    boolean planted = was.planted() && is.planted();
    List<Move> hip = new ArrayList<>();
    limb(hip, What.HIP_FLEXION, side, Joint.HIP, Movement.FLEXION);
    if (!planted) {
      limb(hip, What.HIP_ABDUCTION, side, Joint.HIP, Movement.ABDUCTION);
      limb(hip, What.HIP_ROTATION, side, Joint.HIP, Movement.ROTATION);
    }
    List<Move> leg = new ArrayList<>(largest(hip));
    limb(leg, What.KNEE, side, Joint.KNEE, Movement.FLEXION);
    if (!was.planted() && !is.planted()) {
      limb(leg, What.ANKLE, side, Joint.ANKLE, Movement.DORSIFLEXION);
    } else if (was != is && planted && was != Resting.KNEE && is != Resting.KNEE) {
      leg.add(heel(side, is == Resting.TOES));
    }
    together(leg, What.HIP_FLEXION, Move.Way.MORE, What.KNEE, Move.Way.MORE, What.LEG_BEND);
    together(leg, What.HIP_FLEXION, Move.Way.BACK, What.KNEE, Move.Way.BACK, What.LEG_STRAIGHTEN);
    moves.addAll(leg);
  }

  private static Move heel(Side side, boolean rises) {
    Move.Way way = rises ? Move.Way.MORE : Move.Way.BACK;
    return new Move(What.HEEL_RISE, way, Sides.of(side), 2 * TOLD);
  }

  /** What lies between the trunk and the part that rests follows from it and is not told. */
  private void arm(Side side, Resting resting) {
    if (resting == Resting.HAND) {
      return;
    }
    List<Move> arm = new ArrayList<>();
    if (resting == Resting.NOTHING) {
      shoulder(arm, side);
    }
    if (resting != Resting.FOREARM) {
      limb(arm, What.ELBOW, side, Joint.ELBOW, Movement.FLEXION);
    }
    together(arm, What.SHOULDER_FLEXION, Move.Way.MORE, What.ELBOW, Move.Way.BACK, What.ARM_REACH);
    together(arm, What.SHOULDER_FLEXION, Move.Way.BEYOND, What.ELBOW, Move.Way.MORE, What.ARM_PULL);
    if (arm.isEmpty()) {
      girdle(arm, side);
      hand(arm, side);
    }
    moves.addAll(arm);
  }

  /** The turn of an arm that also rises is not what is seen. */
  private void shoulder(List<Move> arm, Side side) {
    List<Move> rise = new ArrayList<>();
    limb(rise, What.SHOULDER_FLEXION, side, Joint.SHOULDER, Movement.FLEXION);
    limb(rise, What.SHOULDER_ABDUCTION, side, Joint.SHOULDER, Movement.ABDUCTION);
    arm.addAll(largest(rise));
    if (rise.isEmpty()) {
      limb(arm, What.SHOULDER_ROTATION, side, Joint.SHOULDER, Movement.ROTATION);
    }
  }

  private void girdle(List<Move> arm, Side side) {
    limb(arm, What.SHOULDER_RAISE, side, Joint.SHOULDER, Movement.RAISE);
    limb(arm, What.SHOULDER_PROTRACTION, side, Joint.SHOULDER, Movement.PROTRACTION);
  }

  private void hand(List<Move> arm, Side side) {
    limb(arm, What.FOREARM, side, Joint.FOREARM, Movement.PRONATION);
    limb(arm, What.WRIST_FLEXION, side, Joint.WRIST, Movement.FLEXION);
    limb(arm, What.WRIST_RADIAL, side, Joint.WRIST, Movement.RADIAL);
    double fingers = 0;
    for (Movement movement : Joint.HAND.movements()) {
      Freedom freedom = Freedom.of(Joint.HAND, side, movement);
      fingers += to.get(freedom) - from.get(freedom);
    }
    move(What.HAND, Sides.of(side), 0, fingers, 1)
        .map(
            m ->
                new Move(
                    m.what(),
                    m.way() == Move.Way.MORE ? Move.Way.MORE : Move.Way.BACK,
                    m.sides(),
                    m.size()))
        .ifPresent(arm::add);
  }

  private void limb(List<Move> all, What what, Side side, Joint joint, Movement movement) {
    Freedom freedom = Freedom.of(joint, side, movement);
    double unit = movement.unit() == Movement.Unit.CM ? CM : 1;
    move(what, Sides.of(side), from.get(freedom), to.get(freedom), unit).ifPresent(all::add);
  }

  private static Optional<Move> move(What what, Sides sides, double from, double to, double unit) {
    double size = unit * Math.abs(to - from);
    double still = what == What.HIP_FLEXION ? LEG_STRAIGHT : TOLD / unit;
    return size > TOLD
        ? Optional.of(new Move(what, Move.Way.of(from, to, still), sides, size))
        : Optional.empty();
  }

  /** The largest, and what is nearly as large. */
  private static List<Move> largest(List<Move> moves) {
    double most = moves.stream().mapToDouble(Move::size).max().orElse(0);
    return moves.stream().filter(move -> move.size() >= SHARE * most).toList();
  }

  /** Two joints of a limb that go together are one move. */
  private static void together(
      List<Move> limb, What one, Move.Way way, What other, Move.Way otherWay, What both) {
    Optional<Move> a = limb.stream().filter(m -> m.what() == one && m.way() == way).findFirst();
    Optional<Move> b =
        limb.stream().filter(m -> m.what() == other && m.way() == otherWay).findFirst();
    if (a.isPresent() && b.isPresent()) {
      limb.remove(a.get());
      limb.remove(b.get());
      double size = Math.max(a.get().size(), b.get().size());
      limb.add(new Move(both, Move.Way.MORE, a.get().sides(), size));
    }
  }

  /** The largest few, both sides in one, in the order of {@link What}. */
  private List<Move> told() {
    List<Move> merged = new ArrayList<>();
    for (Move move : moves) {
      Optional<Move> twin =
          merged.stream().filter(m -> m.what() == move.what() && m.way() == move.way()).findFirst();
      twin.ifPresent(merged::remove);
      merged.add(twin.isPresent() ? move.on(Sides.BOTH) : move);
    }
    return merged.stream()
        .sorted(Comparator.comparingDouble(Move::size).reversed())
        .limit(MOST)
        .sorted(Comparator.comparing(Move::what).thenComparing(Move::sides))
        .toList();
  }
}
