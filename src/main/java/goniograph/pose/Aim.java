package goniograph.pose;

import goniograph.body.Side;
import goniograph.body.Vec;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a segment lies in the world, whatever the joints below it do. */
public sealed interface Aim {

  /** Horizontal, the way round that is nearest. */
  record Level() implements Aim {
    @Override
    public String words() {
      return "level";
    }
  }

  /** Vertical: legs with the foot down, trunk and head up, arms the way they nearly point. */
  record Upright() implements Aim {
    @Override
    public String words() {
      return "upright";
    }
  }

  /** In a direction of the room. */
  record Pointing(Direction direction) implements Aim {
    @Override
    public String words() {
      return POINTING + direction.word();
    }

    @Override
    public Aim mirrored() {
      return new Pointing(direction.mirrored());
    }
  }

  /** At the nearest point of a thing in the pose. */
  record PointingAt(String thing) implements Aim {
    @Override
    public String words() {
      return POINTING + thing;
    }
  }

  /** How the author's words for {@link Pointing} and {@link PointingAt} begin. */
  String POINTING = "pointing at ";

  /** As an author writes it. */
  String words();

  /** Left and right swapped. */
  default Aim mirrored() {
    return this;
  }

  /** The directions of the room; ahead is where a standing person looks. */
  enum Direction {
    FLOOR(new Vec(0, -1, 0)),
    CEILING(new Vec(0, 1, 0)),
    FRONT(new Vec(1, 0, 0)),
    BACK(new Vec(-1, 0, 0)),
    LEFT(new Vec(0, 0, Side.LEFT.sign())),
    RIGHT(new Vec(0, 0, Side.RIGHT.sign()));

    private final Vec way;

    Direction(Vec way) {
      this.way = way;
    }

    /** A unit vector in the world. */
    public Vec way() {
      return way;
    }

    /** The author's word. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    Direction mirrored() {
      return this == LEFT ? RIGHT : this == RIGHT ? LEFT : this;
    }

    static Optional<Direction> of(String word) {
      return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
    }

    /** All words. */
    public static List<String> words() {
      return Arrays.stream(values()).map(Direction::word).toList();
    }
  }
}
