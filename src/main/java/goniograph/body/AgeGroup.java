package goniograph.body;

/** Whose norms a range of motion is held against. */
public enum AgeGroup {
  ADULT,
  /** About 65 and older. */
  OLDER
}
