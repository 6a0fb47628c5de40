package goniograph.register;

import goniograph.matter.Spellings;

/** How things stand with a sheet, gravest last. */
public enum State {
  /** All that is needed is signed and holds. */
  READY,
  /** The day by which it must be reviewed has passed. */
  OVERDUE,
  /** Nobody has recorded what the language version was made from. */
  UNRECORDED,
  /** A signature is missing. */
  UNSIGNED,
  /** The source text has changed since it was translated. */
  STALE,
  /** There is no version in this language, or a part of it is missing. */
  MISSING,
  /** What was signed has been edited. */
  VOID,
  /** Withdrawn. */
  RECALLED;

  /** The word used in reports. */
  public String word() {
    return Spellings.word(this);
  }
}
