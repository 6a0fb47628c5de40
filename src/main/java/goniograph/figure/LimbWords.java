package goniograph.figure;

import goniograph.body.Side;
import java.util.Optional;

/** Words for the side that is shown, in the page's language. */
@FunctionalInterface
public interface LimbWords {
  /** A drawing without side words. */
  LimbWords NONE = (side, group) -> Optional.empty();

  /** An arm or a leg as a whole. */
  enum Group {
    ARM,
    LEG
  }

  /** What stands at the working limb, for instance {@code right arm}. */
  Optional<String> of(Side side, Group group);
}
