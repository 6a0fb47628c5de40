package goniograph.cli;

import goniograph.finding.Finding;

/**
 * A command cannot do what it was asked for: wrong usage or a library that is not fit for it. The
 * message says in one sentence what is wrong and in one what to do. Ends with {@link Exit#USAGE}.
 */
final class Refusal extends RuntimeException {
  Refusal(String message) {
    super(message);
  }

  /** What a finding forbids, for instance "Not signed". */
  static Refusal because(String refused, Finding finding) {
    return new Refusal(
        refused
            + ": "
            + finding.at().file()
            + ":"
            + finding.at().line()
            + ": "
            + finding.what()
            + " "
            + finding.mend());
  }
}
