package goniograph.register;

import goniograph.finding.Finding;

/**
 * One thing that keeps a sheet from being printed as final, or will soon.
 *
 * @param state what it makes of the sheet
 * @param print how the sheet may still be printed
 * @param finding the same in words
 * @param about what in those words may stand in a list with others of which the same is to be said,
 *     for instance {@code `s-chest`}; "" where there is nothing to list
 */
public record Reason(State state, Print print, Finding finding, String about) {

  Reason(State state, Print print, Finding finding) {
    this(state, print, finding, "");
  }

  /** The same about an entry. */
  Reason withEntry(String id) {
    return new Reason(state, print, finding.withEntry(id), about);
  }

  /** The same in a language. */
  Reason withLanguage(String tag) {
    return new Reason(state, print, finding.withLanguage(tag), about);
  }

  /** The same, to be listed with others. */
  Reason about(String id) {
    return new Reason(state, print, finding, id);
  }
}
