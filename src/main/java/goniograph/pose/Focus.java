package goniograph.pose;

import goniograph.body.Side;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The part of the body that a drawing shows, large; the rest is cut off.
 *
 * @param side the side of a hand, arm or foot
 */
public record Focus(Region region, Optional<Side> side) {

  /** What can be shown alone. */
  public enum Region {
    HEAD,
    UPPER_BODY,
    LEGS,
    ARM,
    HAND,
    FOOT;

    private boolean paired() {
      return this == ARM || this == HAND || this == FOOT;
    }

    private String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** Left and right swapped. */
  Focus mirrored() {
    return new Focus(region, side.map(Side::other));
  }

  /** The author's words: {@code head}, {@code upper body}, {@code right hand}. */
  public static Map<String, Focus> words() {
    Map<String, Focus> words = new LinkedHashMap<>();
    for (Region region : Region.values()) {
      if (region.paired()) {
        words.put("left " + region.word(), new Focus(region, Optional.of(Side.LEFT)));
        words.put("right " + region.word(), new Focus(region, Optional.of(Side.RIGHT)));
      } else {
        words.put(region.word(), new Focus(region, Optional.empty()));
      }
    }
    return words;
  }
}
