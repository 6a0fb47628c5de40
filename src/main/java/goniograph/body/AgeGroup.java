package goniograph.body;

/** Whose norms a range of motion is held against. */
public enum AgeGroup {
  /** 2 to 8 years. */
  CHILD,
  ADULT,
  /** About 65 and older. */
  OLDER
}
