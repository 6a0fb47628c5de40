package goniograph.dose;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Which side works, and how both are counted.
 *
 * @param mode which side, or how both take turns
 * @param count whether the dose is per side or in all; left out only where it makes no difference
 * @param askAtPrint whether the side is asked at print
 * @param meaning phrase id of what the side means where it is not the working one, for instance
 *     {@code front-foot}
 */
public record Sides(
    Mode mode, Optional<Counting> count, boolean askAtPrint, Optional<String> meaning) {

  /** Side modes. */
  public enum Mode {
    LEFT,
    RIGHT,
    BOTH_TOGETHER,
    EACH_IN_TURN,
    ALTERNATE,
    AFFECTED,
    MIDLINE;

    /** Its word in front matter, for instance {@code each-in-turn}. */
    public String word() {
      return wordOf(this);
    }

    /** The mode of a word. */
    public static Optional<Mode> ofWord(String word) {
      return Arrays.stream(values()).filter(mode -> mode.word().equals(word)).findFirst();
    }
  }

  /** What the numbers count. */
  public enum Counting {
    PER_SIDE,
    TOTAL;

    /** Its word in front matter, for instance {@code per-side}. */
    public String word() {
      return wordOf(this);
    }

    /** The counting of a word. */
    public static Optional<Counting> ofWord(String word) {
      return Arrays.stream(values()).filter(count -> count.word().equals(word)).findFirst();
    }
  }

  /** Sides that need no more than their mode. */
  public static Sides of(Mode mode) {
    return new Sides(mode, Optional.empty(), false, Optional.empty());
  }

  /** Sides with what is counted. */
  public static Sides of(Mode mode, Counting count) {
    return new Sides(mode, Optional.of(count), false, Optional.empty());
  }

  /** Whether {@code count} must be said: wherever the mode is not midline or both together. */
  public boolean countRequired() {
    return mode != Mode.MIDLINE && mode != Mode.BOTH_TOGETHER;
  }

  /** Whether both sides are done, one after the other or changing. */
  public boolean bothInTurn() {
    return mode == Mode.EACH_IN_TURN || mode == Mode.ALTERNATE;
  }

  /** How many sides count in the time of a session: 2 where both are done and counted per side. */
  public int timed() {
    return bothInTurn() && count.equals(Optional.of(Counting.PER_SIDE)) ? 2 : 1;
  }

  private static String wordOf(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
