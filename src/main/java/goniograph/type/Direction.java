package goniograph.type;

import com.ibm.icu.text.Bidi;

/** The direction in which a piece of text is set. */
public enum Direction {
  /** One run, read to the right. */
  LEFT_TO_RIGHT(Bidi.LTR),
  /** One run, read to the left. */
  RIGHT_TO_LEFT(Bidi.RTL),
  /** Whatever the bidirectional algorithm finds, to the right where the text leaves it open. */
  AUTO(Bidi.LEVEL_DEFAULT_LTR),
  /** Whatever the bidirectional algorithm finds in a line that is read to the left as a whole. */
  RIGHT_TO_LEFT_LINE(Bidi.RTL);

  private final byte level;

  Direction(byte level) {
    this.level = level;
  }

  byte level() {
    return level;
  }

  boolean isOneRun() {
    return this == LEFT_TO_RIGHT || this == RIGHT_TO_LEFT;
  }
}
