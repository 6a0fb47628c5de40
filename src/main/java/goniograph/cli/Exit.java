package goniograph.cli;

/** The exit codes of every command. */
final class Exit {
  /** Done, and nothing found at or above {@code --fail-on}. */
  static final int CLEAN = 0;

  /** Done, and something was found at or above {@code --fail-on}. */
  static final int FINDINGS = 1;

  /** Not done: the command line or the library cannot be used as they are. */
  static final int USAGE = 2;

  /** Not done, and by a fault of Goniograph's own. */
  static final int FAULT = 3;

  private Exit() {}
}
