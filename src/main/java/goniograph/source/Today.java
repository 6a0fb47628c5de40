package goniograph.source;

import java.time.LocalDate;
import java.time.ZoneId;

/** The one reader of the clock: which day it is. */
public final class Today {
  private Today() {}

  /** The system's date in a time zone. */
  public static LocalDate in(ZoneId zone) {
    return LocalDate.now(zone);
  }
}
