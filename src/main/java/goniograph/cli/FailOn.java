package goniograph.cli;

import goniograph.finding.Finding;
import goniograph.finding.Level;

/** The level that makes a command fail. */
enum FailOn {
  error(Level.ERROR),
  warning(Level.WARNING);

  private final Level level;

  FailOn(Level level) {
    this.level = level;
  }

  /** Whether a finding is at or above it, and nobody lets it stand. */
  boolean reached(Finding finding) {
    return !finding.accepted() && finding.level().compareTo(level) <= 0;
  }
}
