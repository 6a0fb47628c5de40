package goniograph.body;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One degree of freedom: a joint, its side and a movement.
 *
 * @param joint the joint
 * @param side its side; empty for joints of the trunk
 * @param movement one of the joint's movements
 */
public record Freedom(Joint joint, Optional<Side> side, Movement movement)
    implements Comparable<Freedom> {
  private static final Comparator<Freedom> ORDER =
      Comparator.comparing(Freedom::joint)
          .thenComparing(f -> f.side.map(Side::ordinal).orElse(-1))
          .thenComparing(Freedom::movement);

  public Freedom {
    if (joint.paired() != side.isPresent() || !joint.movements().contains(movement)) {
      throw new IllegalArgumentException(joint + " " + side + " " + movement);
    }
  }

  /** A freedom of the trunk. */
  public static Freedom of(Joint joint, Movement movement) {
    return new Freedom(joint, Optional.empty(), movement);
  }

  /** A freedom of a limb. */
  public static Freedom of(Joint joint, Side side, Movement movement) {
    return new Freedom(joint, Optional.of(side), movement);
  }

  /** Every freedom of the body, in order. */
  public static List<Freedom> all() {
    List<Freedom> all = new ArrayList<>();
    for (Joint joint : Joint.values()) {
      List<Optional<Side>> sides =
          joint.paired()
              ? List.of(Optional.of(Side.LEFT), Optional.of(Side.RIGHT))
              : List.of(Optional.empty());
      sides.forEach(side -> joint.movements().forEach(m -> all.add(new Freedom(joint, side, m))));
    }
    return List.copyOf(all);
  }

  /** The same movement on the other side; of the trunk, itself. */
  public Freedom mirrored() {
    return new Freedom(joint, side.map(Side::other), movement);
  }

  /** The author's words for the joint: {@code hip left}, {@code lumbar}. */
  public String jointWords() {
    return joint.word() + side.map(s -> " " + s.name().toLowerCase(Locale.ROOT)).orElse("");
  }

  @Override
  public int compareTo(Freedom other) {
    return ORDER.compare(this, other);
  }
}
