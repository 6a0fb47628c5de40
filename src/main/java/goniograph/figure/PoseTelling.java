package goniograph.figure;

import goniograph.body.BasePosture;
import goniograph.body.Freedom;
import goniograph.body.Joint;
import goniograph.body.JointAngles;
import goniograph.body.Movement;
import goniograph.body.Reading;
import goniograph.body.Side;
import goniograph.body.Turn;
import goniograph.pose.Moment;
import goniograph.pose.Part;
import goniograph.pose.Scene;
import goniograph.pose.Support;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a drawing shows, as data: the words of a text alternative are put together from it in each
 * language. Angles are read from the solved pose.
 *
 * @param base the base posture's word
 * @param view the view's word
 * @param supports the words of what carries or steadies the body, each once
 * @param changes what moves in degrees, step by step, the largest change of a step first
 * @param panels what each drawing shows, in order
 */
public record PoseTelling(
    String base, String view, List<String> supports, List<Change> changes, List<Panel> panels) {
  /** A change of less than this is not told, degrees. */
  private static final double TOLD = 8;

  private static final int ROUNDED_TO = 5;

  public PoseTelling {
    supports = List.copyOf(supports);
    changes = List.copyOf(changes);
    panels = List.copyOf(panels);
  }

  /** Which side moves. */
  public enum Sides {
    MIDLINE,
    LEFT,
    RIGHT,
    BOTH;

    static Sides of(Side side) {
      return side == Side.LEFT ? LEFT : RIGHT;
    }

    /** The word that phrases select by. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * What one drawing shows.
   *
   * @param moves what has moved since the drawing before; in the first, what tells the pose from
   *     its base posture
   * @param touches what touches now and did not before
   * @param leaves what touched before and does so no longer
   * @param hands where free hands are now, where they have moved
   * @param shapes the named shapes that hands have taken
   * @param stance how both feet stand in the first drawing, where one is ahead
   */
  public record Panel(
      List<Move> moves,
      List<Touch> touches,
      List<Touch> leaves,
      List<HandPlace> hands,
      List<ShapedHand> shapes,
      Optional<Stance> stance) {
    public Panel {
      moves = List.copyOf(moves);
      touches = List.copyOf(touches);
      leaves = List.copyOf(leaves);
      hands = List.copyOf(hands);
      shapes = List.copyOf(shapes);
    }
  }

  /**
   * One joint's movement between two key frames.
   *
   * @param step the number of the key frame it ends in, from 2 as the panels are numbered
   * @param from degrees, to the nearest 5
   * @param to degrees, to the nearest 5
   */
  public record Change(int step, Joint joint, Sides sides, Movement movement, int from, int to) {
    int size() {
      return Math.abs(to - from);
    }
  }

  /** What a scene shows. */
  public static PoseTelling of(Scene scene) {
    Turn base = BasePosture.of(scene.base()).map(BasePosture::turn).orElse(Turn.NONE);
    List<JointAngles> read =
        scene.keys().stream().map(Moment::skeleton).map(s -> Reading.of(s, base)).toList();
    List<Change> changes = new ArrayList<>();
    for (int i = 1; i < read.size(); i++) {
      changes.addAll(changes(i + 1, read.get(i - 1), read.get(i)));
    }
    List<String> supports = scene.supports().stream().map(Support::kind).distinct().toList();
    return new PoseTelling(
        scene.base(), scene.view(), supports, changes, PanelTelling.panels(scene));
  }

  /** True for postures in which the trunk is upright, so that heights are those of the body. */
  static boolean upright(BasePosture base) {
    return switch (base) {
      case STANDING, SITTING, LONG_SITTING, KNEELING, HALF_KNEELING, LEANING, STEPPING -> true;
      default -> false;
    };
  }

  /** True for parts of the arm. */
  static boolean ofArm(Part part) {
    return switch (part) {
      case HAND, FINGERTIPS, FOREARM, ELBOW -> true;
      default -> false;
    };
  }

  private static List<Change> changes(int step, JointAngles before, JointAngles after) {
    List<Change> changes = new ArrayList<>();
    for (Freedom freedom : after.values().keySet()) {
      if (told(freedom, before, after)) {
        add(changes, change(step, freedom, before, after));
      }
    }
    changes.sort(Comparator.comparingInt(Change::size).reversed());
    return changes;
  }

  private static boolean told(Freedom freedom, JointAngles before, JointAngles after) {
    return freedom.movement().unit() == Movement.Unit.DEGREES
        && freedom.joint() != Joint.HAND
        && Math.abs(after.get(freedom) - before.get(freedom)) > TOLD;
  }

  private static Change change(int step, Freedom freedom, JointAngles before, JointAngles after) {
    Sides sides = freedom.side().map(Sides::of).orElse(Sides.MIDLINE);
    return new Change(
        step,
        freedom.joint(),
        sides,
        freedom.movement(),
        rounded(before.get(freedom)),
        rounded(after.get(freedom)));
  }

  private static int rounded(double degrees) {
    return (int) Math.round(degrees / ROUNDED_TO) * ROUNDED_TO;
  }

  /** The same on the other side makes one of two. */
  private static void add(List<Change> changes, Change change) {
    for (int i = 0; i < changes.size(); i++) {
      Change other = changes.get(i);
      if (onSides(other, Sides.BOTH).equals(onSides(change, Sides.BOTH))) {
        changes.set(i, onSides(other, Sides.BOTH));
        return;
      }
    }
    changes.add(change);
  }

  private static Change onSides(Change c, Sides sides) {
    return new Change(c.step(), c.joint(), sides, c.movement(), c.from(), c.to());
  }
}
