package goniograph.render;

import java.util.Locale;

/** A part of the page that has a place of its own, and so can be too long for it. */
public enum Block {
  /** All above the stop box: title, reason, dose, drawings, steps. */
  STEPS,
  /** The stop box and the telephone line. */
  STOP_BOX,
  /** The main column of the back. */
  BACK,
  /** The ladder beside it. */
  LADDER,
  /** The diary below both. */
  DIARY;

  /** Its name in findings, for instance {@code stop box}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
