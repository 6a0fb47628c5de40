package goniograph.figure;

import goniograph.body.BasePosture;
import goniograph.body.Turn;
import goniograph.body.Vec;
import goniograph.pose.Box;
import goniograph.pose.Scene;
import goniograph.pose.Support;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A wheelchair in place of a chair: the seat, the back and the arm rests that the body was solved
 * on stay where they are; legs give way to wheels, forks and handles. The foot rests are swung
 * away, for the feet stand on the floor. Measures are the house's own.
 */
final class Wheelchair {
  static final String KIND = "wheelchair";
  private static final double WHEEL = .172;
  private static final double CASTOR = .042;

  /** Whoever sits stays seated while the hips rise no more than this. */
  private static final double SEATED = .02;

  private static final double BAR = .008;

  private Wheelchair() {}

  /** A wheel: its middle and its radius. */
  record Wheel(Vec centre, double radius) {}

  /** The scene with a wheelchair, where someone stays seated on a chair; else the scene itself. */
  static Scene in(Scene scene) {
    if (!scene.base().equals(BasePosture.SITTING.word()) || !staysSeated(scene)) {
      return scene;
    }
    List<Support> supports =
        scene.supports().stream()
            .map(s -> s.kind().equals("chair") && s.carries() ? of(s) : s)
            .toList();
    return scene.with(supports);
  }

  private static boolean staysSeated(Scene scene) {
    double first = scene.keys().get(0).skeleton().pelvis().origin().y();
    return scene.motion().stream()
        .allMatch(m -> Math.abs(m.skeleton().pelvis().origin().y() - first) < SEATED);
  }

  private static Support of(Support chair) {
    Box seat = seat(chair);
    List<Box> boxes = new ArrayList<>(List.of(seat));
    chair.boxes().stream().filter(box -> bottom(box) >= top(seat)).forEach(boxes::add);
    back(chair)
        .ifPresent(
            back -> {
              posts(seat, back, boxes);
              handles(back, boxes);
            });
    forks(seat, boxes);
    return new Support(KIND, boxes, true);
  }

  /** The widest level box. */
  private static Box seat(Support chair) {
    return chair.boxes().stream()
        .max(Comparator.comparingDouble(box -> box.half().x() * box.half().z()))
        .orElseThrow();
  }

  private static Optional<Box> back(Support chair) {
    Box seat = seat(chair);
    return chair.boxes().stream()
        .filter(box -> bottom(box) >= top(seat) && box.half().z() > .6 * seat.half().z())
        .findFirst();
  }

  private static double top(Box box) {
    return box.centre().y() + box.half().y();
  }

  private static double bottom(Box box) {
    return box.centre().y() - box.half().y();
  }

  private static void posts(Box seat, Box back, List<Box> boxes) {
    double from = top(seat);
    double to = bottom(back);
    if (to > from) {
      for (double z : sides(back, BAR)) {
        boxes.add(bar(back.centre().x(), BAR, (from + to) / 2, (to - from) / 2, z));
      }
    }
  }

  private static void handles(Box back, List<Box> boxes) {
    for (double z : sides(back, BAR)) {
      double x = back.centre().x() - back.half().x() - .035;
      boxes.add(bar(x, .035, top(back) - BAR, BAR, z));
    }
  }

  private static void forks(Box seat, List<Box> boxes) {
    double from = 2 * CASTOR;
    double to = bottom(seat);
    for (double z : sides(seat, BAR)) {
      boxes.add(bar(front(seat), BAR, (from + to) / 2, (to - from) / 2, z));
    }
  }

  private static double front(Box seat) {
    return seat.centre().x() + seat.half().x() - .02;
  }

  private static List<Double> sides(Box box, double in) {
    double z = box.half().z() - in;
    return List.of(box.centre().z() - z, box.centre().z() + z);
  }

  private static Box bar(double x, double halfLong, double y, double halfHigh, double z) {
    return new Box(new Vec(x, y, z), Turn.NONE, new Vec(halfLong, halfHigh, BAR));
  }

  /** The four wheels of a wheelchair. */
  static List<Wheel> wheels(Support wheelchair) {
    Box seat = wheelchair.boxes().get(0);
    double axle = seat.centre().x() - seat.half().x() + .03;
    List<Wheel> wheels = new ArrayList<>();
    for (double z : sides(seat, -.022)) {
      wheels.add(new Wheel(new Vec(axle, WHEEL, z), WHEEL));
    }
    for (double z : sides(seat, BAR)) {
      wheels.add(new Wheel(new Vec(front(seat), CASTOR, z), CASTOR));
    }
    return wheels;
  }
}
