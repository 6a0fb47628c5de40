package goniograph.check.rules;

import goniograph.check.Checked;
import goniograph.library.Clinic;

/** The clinic's settings as rules ask for them. */
final class Settings {
  private Settings() {}

  /** The settings, or what holds where the clinic file could not be read. */
  static Clinic.Settings of(Checked checked) {
    return checked.library().clinic().map(Clinic::settings).orElse(Clinic.Settings.DEFAULT);
  }
}
