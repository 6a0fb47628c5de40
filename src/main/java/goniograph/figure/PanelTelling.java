package goniograph.figure;

import goniograph.body.BasePosture;
import goniograph.body.Frame;
import goniograph.body.Kinematics;
import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import goniograph.figure.PoseTelling.Panel;
import goniograph.figure.PoseTelling.Sides;
import goniograph.pose.Moment;
import goniograph.pose.Part;
import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds what each drawing of a scene shows that the one before it did not. */
final class PanelTelling {
  /** A free hand is told where it has gone farther than this, body heights. */
  private static final double HAND_MOVES = .06;

  private static final Touch FEET = new Touch(Part.FOOT, Sides.BOTH, false, "floor");

  private PanelTelling() {}

  static List<Panel> panels(Scene scene) {
    BasePosture base = BasePosture.of(scene.base()).orElse(BasePosture.STANDING);
    List<Moment> keys = scene.keys();
    List<Panel> panels = new ArrayList<>();
    panels.add(first(base, keys));
    for (int i = 1; i < keys.size(); i++) {
      panels.add(next(base, keys.get(i - 1), keys.get(i)));
    }
    return panels;
  }

  private static Panel first(BasePosture base, List<Moment> keys) {
    Moment pose = keys.get(0);
    Skeleton s = pose.skeleton();
    Skeleton plain = Kinematics.skeleton(s.body(), base.turn(), base.angles(), Vec.ZERO);
    List<Touch> touches = both(touches(pose));
    boolean stands = touches.contains(FEET) && base == BasePosture.STANDING;
    if (stands) { // standing says so
      touches.remove(FEET);
    }
    return new Panel(
        Moves.taken(base, plain, pose),
        touches,
        List.of(),
        List.of(),
        shapes(s, side -> Resting.arm(pose, side) != Resting.HAND && changes(keys, side)),
        stands ? Stance.of(s) : Optional.empty());
  }

  private static Panel next(BasePosture base, Moment before, Moment after) {
    List<Touch> was = touches(before);
    List<Touch> is = touches(after);
    List<HandPlace> hands = PoseTelling.upright(base) ? hands(before.skeleton(), after) : List.of();
    List<ShapedHand> shapes =
        shapes(
            after.skeleton(), side -> !ShapedHand.same(before.skeleton(), after.skeleton(), side));
    List<Move> moves = new ArrayList<>(Moves.between(base, before, after));
    moves.removeIf(move -> move.what() == Move.What.HAND && !shapes.isEmpty());
    return new Panel(
        moves,
        both(is.stream().filter(touch -> !was.contains(touch)).toList()),
        both(
            was.stream()
                .filter(touch -> gone(touch, is))
                .filter(
                    touch -> hands.isEmpty() || touch.held() || !PoseTelling.ofArm(touch.part()))
                .toList()),
        hands,
        shapes,
        Optional.empty());
  }

  /** A foot that rolls onto its toes or back has not left. */
  private static boolean gone(Touch touch, List<Touch> is) {
    return is.stream().noneMatch(now -> now.equals(touch) || rolled(now, touch));
  }

  private static boolean rolled(Touch now, Touch was) {
    return sole(now) && sole(was) && now.sides() == was.sides();
  }

  private static boolean sole(Touch touch) {
    return touch.part() == Part.FOOT || touch.part() == Part.TOES;
  }

  /** What touches, side by side, each once, in the order of the pose file. */
  private static List<Touch> touches(Moment moment) {
    return moment.contacts().stream().map(Touch::of).distinct().toList();
  }

  /** The same with both sides in one. */
  private static List<Touch> both(List<Touch> touches) {
    List<Touch> all = new ArrayList<>();
    for (Touch touch : touches) {
      Optional<Touch> twin = all.stream().filter(touch::twin).findFirst();
      if (twin.isPresent()) {
        all.set(all.indexOf(twin.get()), touch.on(Sides.BOTH));
      } else {
        all.add(touch);
      }
    }
    return all;
  }

  private static boolean changes(List<Moment> keys, Side side) {
    Skeleton first = keys.get(0).skeleton();
    return keys.stream().anyMatch(key -> !ShapedHand.same(first, key.skeleton(), side));
  }

  private static List<ShapedHand> shapes(Skeleton s, Predicate<Side> told) {
    return ShapedHand.both(
        Arrays.stream(Side.values())
            .filter(told)
            .flatMap(side -> ShapedHand.of(s, side).stream())
            .toList());
  }

  private static List<HandPlace> hands(Skeleton before, Moment after) {
    List<HandPlace> places = new ArrayList<>();
    for (Side side : Side.values()) {
      Skeleton s = after.skeleton();
      double way = reached(s, side).minus(reached(before, side)).length();
      if (way > HAND_MOVES && Resting.arm(after, side) == Resting.NOTHING) {
        places.add(HandPlace.of(s, side));
      }
    }
    if (places.size() == 2
        && places.get(0).height() == places.get(1).height()
        && places.get(0).reach() == places.get(1).reach()) {
      HandPlace one = places.get(0);
      return List.of(new HandPlace(Sides.BOTH, one.height(), one.reach()));
    }
    return places;
  }

  /** Where a hand is for the body: a hand that is carried along has not moved. */
  private static Vec reached(Skeleton s, Side side) {
    Frame chest = s.spine(SpineJoint.T5);
    return chest.axes().invert(Landmarks.palm(s, side).minus(chest.origin()));
  }
}
