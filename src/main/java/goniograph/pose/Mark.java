package goniograph.pose;

import goniograph.body.Side;
import java.util.Optional;

/** Something drawn on top of the body. */
public sealed interface Mark {

  /** The way a point of the body takes from the first key frame to the last. */
  record Arrow(String part, Optional<Side> side) implements Mark {}

  /** The size of a joint's angle, drawn in its true plane. */
  record Angle(String joint, Optional<Side> side) implements Mark {}

  /** A dashed outline of the moving parts in the start pose. */
  record Ghost() implements Mark {}

  /** The centre of mass above the base of support. */
  record Balance() implements Mark {}
}
