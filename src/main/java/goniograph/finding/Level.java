package goniograph.finding;

import java.util.Locale;

/** How grave a finding is, gravest first. */
public enum Level {
  /** The sheet is not printed. */
  ERROR,
  /** The sheet is printed; someone should look. */
  WARNING,
  /** For information. */
  NOTE;

  /** The word used in reports. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
