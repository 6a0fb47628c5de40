package goniograph.body;

import java.util.Optional;

/**
 * A movement of a joint with its two opposite words: the first is the positive direction, the
 * second is written with a minus sign in {@link JointAngles}. Right and left of the trunk are the
 * person's own.
 */
public enum Movement {
  TILT("tilt forward", "tilt back", Unit.DEGREES),
  FLEXION("flexion", "extension", Unit.DEGREES),
  BEND("bend right", "bend left", Unit.DEGREES),
  TURN("turn right", "turn left", Unit.DEGREES),
  ABDUCTION("abduction", "adduction", Unit.DEGREES),
  ROTATION("external rotation", "internal rotation", Unit.DEGREES),
  PRONATION("pronation", "supination", Unit.DEGREES),
  DORSIFLEXION("dorsiflexion", "plantarflexion", Unit.DEGREES),
  RADIAL("radial", "ulnar", Unit.DEGREES),
  RAISE("raise", "lower", Unit.CM),
  PROTRACTION("protraction", "retraction", Unit.CM),
  TUCK("tuck", "poke", Unit.CM),
  KNUCKLES("knuckles", "", Unit.DEGREES),
  MIDDLE("middle joints", "", Unit.DEGREES),
  ENDS("end joints", "", Unit.DEGREES),
  THUMB("thumb", "", Unit.DEGREES);

  /** What a movement's number counts. */
  public enum Unit {
    DEGREES,
    CM
  }

  /** A movement's word with the sign it stands for. */
  public record Word(Movement movement, int sign) {}

  private final String positive;
  private final String negative;
  private final Unit unit;

  Movement(String positive, String negative, Unit unit) {
    this.positive = positive;
    this.negative = negative;
    this.unit = unit;
  }

  /** The word of the positive direction. */
  public String positive() {
    return positive;
  }

  /** The word of the negative direction; "" where there is none. */
  public String negative() {
    return negative;
  }

  /** Degrees, or cm for movements that shift a joint. */
  public Unit unit() {
    return unit;
  }

  /** The author's word for a value: {@code extension} for a flexion of -10. */
  public String word(double value) {
    return value < 0 && !negative.isEmpty() ? negative : positive;
  }

  /** True where the value changes sign when left and right are swapped. */
  boolean flipsWithSide() {
    return this == BEND || this == TURN;
  }

  /** The movement an author's word names. */
  public static Optional<Word> of(String word) {
    for (Movement movement : values()) {
      if (movement.positive.equals(word)) {
        return Optional.of(new Word(movement, 1));
      }
      if (!word.isEmpty() && movement.negative.equals(word)) {
        return Optional.of(new Word(movement, -1));
      }
    }
    return Optional.empty();
  }
}
