package goniograph.check;

/** Who may let a finding stand. */
public enum Acceptance {
  /** A plain mistake: there is nothing to weigh up. */
  NOBODY("Nobody: it is a plain mistake, to be mended."),
  /** A safety error: only the signed rule table or statement can change what is asked for. */
  SIGNED_TABLE("Nobody in the entry: two clinicians change and sign the table the rule reads."),
  /** A clinical judgement. */
  CLINICIAN("A clinical reviewer, with a reason and a day on which it ends."),
  /** A judgement about words. */
  AUTHOR("The content lead, with a reason and a day on which it ends."),
  /** A judgement about a language version. */
  LANGUAGE_REVIEWER("The language reviewer, with a reason and a day on which it ends.");

  private final String words;

  Acceptance(String words) {
    this.words = words;
  }

  /** In words for the page of a rule. */
  public String words() {
    return words;
  }
}
