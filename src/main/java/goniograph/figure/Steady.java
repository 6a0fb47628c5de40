package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import goniograph.pose.Moment;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A movement without tremor: a segment that moves less than can be seen stays exactly where it was,
 * so that it is drawn once.
 */
final class Steady {
  /** Body heights; a tenth of a line's width at print size. */
  private static final double MOVES = .0008;

  private Steady() {}

  /** The same moments, their still segments exactly still. */
  static List<Moment> of(List<Moment> motion) {
    List<Moment> steady = new ArrayList<>();
    for (Moment moment : motion) {
      Skeleton now = moment.skeleton();
      Skeleton held = steady.isEmpty() ? now : held(now, steady.get(steady.size() - 1).skeleton());
      steady.add(new Moment(moment.name(), held, moment.props(), moment.contacts()));
    }
    return steady;
  }

  private static Skeleton held(Skeleton now, Skeleton before) {
    Map<SpineJoint, Frame> spine = new EnumMap<>(now.spine());
    spine.replaceAll((joint, frame) -> held(frame, before.spine(joint)));
    return new Skeleton(
        now.body(),
        held(now.pelvis(), before.pelvis()),
        spine,
        limbs(now, before, Side.LEFT),
        limbs(now, before, Side.RIGHT),
        now.fingers());
  }

  private static Map<Limb, Frame> limbs(Skeleton now, Skeleton before, Side side) {
    Map<Limb, Frame> limbs = new EnumMap<>(Limb.class);
    for (Limb limb : Limb.values()) {
      limbs.put(limb, held(now.limb(limb, side), before.limb(limb, side)));
    }
    return limbs;
  }

  /** A segment reaches a quarter of the body's height: so far from its joint its turning shows. */
  private static Frame held(Frame now, Frame before) {
    return near(now.origin(), before.origin(), MOVES) && near(now.axes(), before.axes())
        ? before
        : now;
  }

  private static boolean near(Turn now, Turn before) {
    return near(now.x(), before.x(), 4 * MOVES)
        && near(now.y(), before.y(), 4 * MOVES)
        && near(now.z(), before.z(), 4 * MOVES);
  }

  private static boolean near(Vec now, Vec before, double most) {
    return now.minus(before).length() < most;
  }
}
