package goniograph.pose;

import goniograph.body.Limb;
import goniograph.body.Side;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * What is marked as moving.
 *
 * @param left the moving segments of the left limbs
 * @param right the moving segments of the right limbs
 * @param trunk true where head or trunk moves
 */
public record Moving(Set<Limb> left, Set<Limb> right, boolean trunk) {
  /** Nothing is marked. */
  public static final Moving NOTHING = new Moving(Set.of(), Set.of(), false);

  public Moving {
    left = Set.copyOf(left);
    right = Set.copyOf(right);
  }

  /** Segments of one side. */
  static Moving of(Side side, Set<Limb> limbs) {
    return side == Side.LEFT
        ? new Moving(limbs, Set.of(), false)
        : new Moving(Set.of(), limbs, false);
  }

  /** Segments of both sides. */
  static Moving both(Set<Limb> limbs, boolean trunk) {
    return new Moving(limbs, limbs, trunk);
  }

  Moving and(Moving other) {
    return new Moving(union(left, other.left), union(right, other.right), trunk || other.trunk);
  }

  /** The segments of each side. */
  Map<Side, Set<Limb>> limbs() {
    Map<Side, Set<Limb>> both = new EnumMap<>(Side.class);
    both.put(Side.LEFT, left);
    both.put(Side.RIGHT, right);
    return both;
  }

  /** Left and right swapped. */
  Moving mirrored() {
    return new Moving(/* left= */ right, /* right= */ left, trunk);
  }

  private static Set<Limb> union(Set<Limb> a, Set<Limb> b) {
    Set<Limb> all = EnumSet.noneOf(Limb.class);
    all.addAll(a);
    all.addAll(b);
    return all;
  }
}
