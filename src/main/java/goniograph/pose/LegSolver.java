package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Toes;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Bends a leg until its foot lies where its contact wants it. */
final class LegSolver {
  /**
   * The rounded heel and ball: middle in the foot's frame, and radius; both touch in a flat foot.
   */
  private static final Vec HEEL = new Vec(-.022, -.022, 0);

  private static final Vec BALL = new Vec(Lengths.BALL, -.023, 0);
  private static final double HEEL_RADIUS = Lengths.ANKLE + HEEL.y();

  /** The rounded toe tip, which touches where the sole does not face down. */
  private static final Vec TOE = new Vec(.096, -.0265, 0);

  private static final double TOE_RADIUS = .0125;

  /** The most a knee is bent in search of a contact; beyond any range of motion. */
  private static final double MOST_BENT = 165;

  /** How high the middle of the ball stands over what it bears on. */
  static final double BALL_RADIUS = Lengths.ANKLE + BALL.y();

  private LegSolver() {}

  /** A leg that was bent, and how far its foot is still away. */
  record Bent(Skeleton skeleton, double miss) {}

  /** The sole flat on a face, the ankle above a point of it, the toes to {@code heading}. */
  static Bent flat(Skeleton s, Side side, Vec point, Vec heading, Vec normal) {
    Vec x = heading.minus(normal.times(heading.dot(normal))).unit();
    Turn foot = new Turn(x, normal, x.cross(normal));
    Vec ankle = point.plus(normal.times(Lengths.ANKLE));
    TwoBone bones = bones(s, side, ankle);
    return new Bent(placed(s, side, bones, foot), bones.miss());
  }

  /** The heel to a point of a face, the ankle angle as typed. */
  static Bent onHeel(Skeleton s, Side side, Vec point, Vec normal) {
    return tip(s, side, point.plus(normal.times(HEEL_RADIUS)), HEEL);
  }

  /** The ball, or the toes of a foot whose sole does not face down, to a point of a face. */
  static Bent onBall(Skeleton s, Side side, Vec point, Vec normal) {
    return onTip(s, side)
        ? tip(s, side, point.plus(normal.times(TOE_RADIUS)), TOE)
        : tip(s, side, point.plus(normal.times(BALL_RADIUS)), BALL);
  }

  /** The whole leg turned about its hip. */
  private static Skeleton swung(Skeleton s, Side side, Turn turn) {
    Map<Limb, Frame> leg = new EnumMap<>(Limb.class);
    Vec hip = Landmarks.hip(s, side);
    for (Limb limb : List.of(Limb.THIGH, Limb.SHANK, Limb.FOOT)) {
      Frame frame = s.limb(limb, side);
      Vec origin = hip.plus(turn.apply(frame.origin().minus(hip)));
      leg.put(limb, new Frame(origin, turn.then(frame.axes())));
    }
    return s.with(side, leg);
  }

  /** Where the heel touches what is below it. */
  static Vec heelPoint(Skeleton s, Side side) {
    return s.limb(Limb.FOOT, side).point(HEEL).minus(Vec.UP.times(HEEL_RADIUS));
  }

  /** Where the ball touches what is below it. */
  static Vec ballPoint(Skeleton s, Side side) {
    return ball(s, side).minus(Vec.UP.times(BALL_RADIUS));
  }

  /** Where ball or toes touch what is below them. */
  static Vec toesPoint(Skeleton s, Side side) {
    return onTip(s, side) ? toePoint(s, side) : ballPoint(s, side);
  }

  /** Where the toe tip touches what is below it, bent up where the floor asks it. */
  static Vec toePoint(Skeleton s, Side side) {
    return Toes.frame(s, side).point(TOE).minus(Vec.UP.times(TOE_RADIUS));
  }

  /** True for a foot of someone lying on the front, or kneeling: its sole does not face down. */
  private static boolean onTip(Skeleton s, Side side) {
    return s.limb(Limb.FOOT, side).axes().y().y() < .2;
  }

  /** The middle of the rounded ball. */
  static Vec ball(Skeleton s, Side side) {
    return s.limb(Limb.FOOT, side).point(BALL);
  }

  /**
   * A point of the foot to a goal: the knee bent until the point is as far from the hip as the goal
   * is, then the whole leg turned about the hip.
   */
  private static Bent tip(Skeleton s, Side side, Vec goal, Vec middle) {
    Vec hip = Landmarks.hip(s, side);
    double wanted = goal.minus(hip).length();
    Skeleton bent = kneeTurned(s, side, bend(s, side, middle, wanted));
    Vec from = bent.limb(Limb.FOOT, side).point(middle).minus(hip);
    Skeleton turned = swung(bent, side, Turn.between(from, goal.minus(hip)));
    return new Bent(turned, Math.abs(from.length() - wanted));
  }

  /** How much more a knee bends until a point of the foot is so far from the hip; in degrees. */
  private static double bend(Skeleton s, Side side, Vec middle, double wanted) {
    Frame shank = s.limb(Limb.SHANK, side);
    Vec thigh = shank.axes().invert(Landmarks.hip(s, side).minus(shank.origin()));
    Vec foot = shank.axes().invert(s.limb(Limb.FOOT, side).point(middle).minus(shank.origin()));
    if (Math.abs(foot.minus(thigh).length() - wanted) < 1e-6) {
      return 0;
    }
    double bent = Math.toDegrees(Math.atan2(-thigh.x(), thigh.y()));
    double low = -bent;
    double high = MOST_BENT - bent;
    for (int i = 0; i < 40; i++) {
      double middleBend = (low + high) / 2;
      boolean tooFar = Turn.aboutZ(-middleBend).apply(foot).minus(thigh).length() > wanted;
      low = tooFar ? middleBend : low;
      high = tooFar ? high : middleBend;
    }
    return (low + high) / 2;
  }

  private static Skeleton kneeTurned(Skeleton s, Side side, double degrees) {
    Frame shank = s.limb(Limb.SHANK, side);
    Frame bent = new Frame(shank.origin(), shank.axes().then(Turn.aboutZ(-degrees)));
    Frame foot = new Frame(bent.point(0, -Lengths.SHANK, 0), bent.axes().then(ankle(s, side)));
    return s.with(side, Map.of(Limb.SHANK, bent, Limb.FOOT, foot));
  }

  /** The ankle to a point, the ankle angle as typed. */
  static Bent ankleAt(Skeleton s, Side side, Vec ankle) {
    TwoBone bones = bones(s, side, ankle);
    Turn foot = bones.farFrame(bones.kneeAxis()).axes().then(ankle(s, side));
    return new Bent(placed(s, side, bones, foot), bones.miss());
  }

  private static Turn ankle(Skeleton s, Side side) {
    Turn shank = s.limb(Limb.SHANK, side).axes();
    return shank.inverse().then(s.limb(Limb.FOOT, side).axes());
  }

  private static Skeleton placed(Skeleton s, Side side, TwoBone bones, Turn foot) {
    Vec axis = bones.kneeAxis();
    return s.with(
        side,
        Map.of(
            Limb.THIGH, bones.nearFrame(axis),
            Limb.SHANK, bones.farFrame(axis),
            Limb.FOOT, new Frame(bones.end(), foot)));
  }

  /** The knee keeps standing out as typed, in part, and to the thigh's front, in part. */
  private static TwoBone bones(Skeleton s, Side side, Vec ankle) {
    Vec hip = Landmarks.hip(s, side);
    Vec line = Landmarks.ankle(s, side).minus(hip).unit();
    Vec knee = Landmarks.knee(s, side).minus(hip);
    Vec typed = knee.minus(line.times(knee.dot(line)));
    Vec front = s.limb(Limb.THIGH, side).axes().x();
    Vec pole = (typed.length() < 1e-6 ? front : typed.unit()).times(.6).plus(front.times(.4));
    return TwoBone.reach(hip, ankle, Lengths.THIGH, Lengths.SHANK, pole);
  }

  /** The heel on a face; the whole leg turns about the hip, knee and ankle keep their angles. */
  static Bent heelSliding(Skeleton s, Side side, Surface face) {
    return sliding(s, side, face, HEEL, HEEL_RADIUS);
  }

  /** As {@link #heelSliding}, the ball of the foot. */
  static Bent ballSliding(Skeleton s, Side side, Surface face) {
    return onTip(s, side)
        ? sliding(s, side, face, TOE, TOE_RADIUS)
        : sliding(s, side, face, BALL, BALL_RADIUS);
  }

  private static Bent sliding(Skeleton s, Side side, Surface face, Vec middle, double radius) {
    Vec hip = Landmarks.hip(s, side);
    Vec from = s.limb(Limb.FOOT, side).point(middle);
    Vec to = Touch.swung(hip, from, face, radius);
    double miss = Math.abs(Touch.out(face, to) - radius);
    return new Bent(swung(s, side, Turn.between(from.minus(hip), to.minus(hip))), miss);
  }

  /** The foot flat on a face; the knee keeps its angle, only the hip moves. */
  static Bent flatSliding(Skeleton s, Side side, Surface face) {
    Vec toes = s.limb(Limb.FOOT, side).axes().x();
    Vec ankle = swung(s, side, face, Lengths.ANKLE);
    Bent bent = flat(s, side, Touch.foot(face, ankle), toes, face.normal());
    return new Bent(bent.skeleton, Math.abs(Touch.out(face, ankle) - Lengths.ANKLE));
  }

  /** The ankle lifted, knee and ankle angles as the lift makes them. */
  static Skeleton lifted(Skeleton s, Side side, double up) {
    return ankleAt(s, side, Landmarks.ankle(s, side).plus(Vec.UP.times(up))).skeleton();
  }

  /** The knee bent more, the hip as it was, so that a kneeling foot rises by about {@code up}. */
  static Skeleton kneeBent(Skeleton s, Side side, double up) {
    return kneeTurned(s, side, Math.toDegrees(up / Lengths.SHANK));
  }

  /** The ankle turned about the hip in the direction it lies, so far out of a face. */
  private static Vec swung(Skeleton s, Side side, Surface face, double out) {
    return Touch.swung(Landmarks.hip(s, side), Landmarks.ankle(s, side), face, out);
  }
}
