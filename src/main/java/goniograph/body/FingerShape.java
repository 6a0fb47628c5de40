package goniograph.body;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The named shapes of a hand. Straight, hook, fist, table-top and flat fist bend each joint not at
 * all or nearly fully, as in the tendon glides of Wehbé and Hunter 1985, J Hand Surg 10A:570 (from
 * memory, not checked); the degrees themselves and the pinch are common practice, no source.
 */
public enum FingerShape {
  STRAIGHT(new Fingers(0, 0, 0, 0)),
  HOOK(new Fingers(0, 95, 65, 0)),
  FIST(new Fingers(85, 95, 65, 90)),
  TABLE_TOP(new Fingers(88, 0, 0, 0)),
  FLAT_FIST(new Fingers(85, 95, 0, 0)),
  PINCH(new Fingers(45, 45, 25, 45));

  private final Fingers fingers;

  FingerShape(Fingers fingers) {
    this.fingers = fingers;
  }

  /** How the fingers are bent. */
  public Fingers fingers() {
    return fingers;
  }

  /** The author's word, for instance {@code table-top}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** All words, in order. */
  public static List<String> words() {
    return Arrays.stream(values()).map(FingerShape::word).toList();
  }

  /** The shape an author's word names. */
  public static Optional<FingerShape> of(String word) {
    return Arrays.stream(values()).filter(shape -> shape.word().equals(word)).findFirst();
  }
}
