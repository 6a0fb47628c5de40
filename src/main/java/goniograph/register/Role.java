package goniograph.register;

import goniograph.matter.Spellings;

/** In which capacity someone signs. */
public enum Role {
  /** Wrote the text. */
  AUTHOR,
  /** Reviewed it as a clinician. */
  CLINICAL,
  /** Translated it. */
  TRANSLATOR,
  /** Reviewed the translation as a second, native reader. */
  LANGUAGE;

  /** The word used in files and on the command line. */
  public String word() {
    return Spellings.word(this);
  }

  /** Whether one person must not do both for the same text. */
  public boolean conflictsWith(Role other) {
    return this != other
        && ((this == AUTHOR && other == CLINICAL)
            || (this == CLINICAL && other == AUTHOR)
            || (this == TRANSLATOR && other == LANGUAGE)
            || (this == LANGUAGE && other == TRANSLATOR));
  }
}
