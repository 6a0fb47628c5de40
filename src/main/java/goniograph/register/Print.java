package goniograph.register;

/** How a sheet may be printed, most freely first. */
public enum Print {
  /** As a sheet for patients. */
  FINAL,
  /** With a band: its review is overdue. */
  OVERDUE,
  /** With a band: the source text has changed since. */
  STALE,
  /** With a band: not for patients. */
  DRAFT,
  /** Not at all. */
  NONE
}
