package goniograph.check.rules;

import goniograph.body.Freedom;
import goniograph.body.Movement;

/** Angles in words. */
final class Angles {
  private Angles() {}

  /** A value as authors write it, in whole numbers: {@code extension 15 deg}. */
  static String words(Freedom freedom, double value) {
    Movement movement = freedom.movement();
    String word = movement.word(value);
    long number = word.equals(movement.positive()) ? Math.round(value) : Math.round(-value);
    return word + " " + number + (movement.unit() == Movement.Unit.DEGREES ? " deg" : " cm");
  }
}
