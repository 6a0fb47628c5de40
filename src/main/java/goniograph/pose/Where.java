package goniograph.pose;

import goniograph.body.Side;
import goniograph.body.Vec;
import java.util.Optional;

/** Where a support stands, seen from the person. */
public enum Where {
  LEFT,
  RIGHT,
  AHEAD,
  BEHIND;

  /** Left and right swapped. */
  Where mirrored() {
    return switch (this) {
      case LEFT -> RIGHT;
      case RIGHT -> LEFT;
      default -> this;
    };
  }

  /** The side, for what stands beside. */
  Optional<Side> side() {
    return switch (this) {
      case LEFT -> Optional.of(Side.LEFT);
      case RIGHT -> Optional.of(Side.RIGHT);
      default -> Optional.empty();
    };
  }

  /** From the person to it, of length 1. */
  Vec away() {
    return switch (this) {
      case LEFT -> new Vec(0, 0, -1);
      case RIGHT -> new Vec(0, 0, 1);
      case AHEAD -> new Vec(1, 0, 0);
      case BEHIND -> new Vec(-1, 0, 0);
    };
  }
}
