package goniograph.finding;

import java.util.Locale;

/** How far a mend may be trusted. */
public enum MendGrade {
  /** Cannot change what a patient does; applied without asking. */
  SAFE,
  /** Plausible; applied only after a yes. */
  ASK,
  /** An example; never applied by the tool. */
  SHOW;

  /** The word used in reports. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
