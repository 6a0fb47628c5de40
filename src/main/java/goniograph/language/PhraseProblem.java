package goniograph.language;

/**
 * What is wrong with a phrase, or with a call of it.
 *
 * @param kind what kind of problem
 * @param id the phrase
 * @param detail the form, argument or words concerned
 * @param at place in the pattern, in characters from its start; 0 if it concerns the whole
 */
public record PhraseProblem(Kind kind, String id, String detail, int at) {
  /** Kinds of problems. */
  public enum Kind {
    /** The pattern is no ICU message; the detail is ICU's message. */
    SYNTAX,
    /** There is no phrase of that id. */
    ID_MISSING,
    /** A plural lacks a form that numbers in use reach; the detail is the CLDR form. */
    PLURAL_FORM_MISSING,
    /** An argument has a kind that no sheet needs: only plain, number, plural, ordinal, select. */
    ARGUMENT_KIND,
    /** The pattern asks for an argument that the call does not give. */
    ARGUMENT_MISSING,
    /** A plural or number argument was given something else. */
    ARGUMENT_NOT_A_NUMBER
  }
}
