package goniograph.register;

import java.time.LocalDate;

/**
 * That a release was frozen.
 *
 * @param name for instance {@code 2026.3}
 * @param by role id of who froze it
 * @param on the day
 * @param manifest digest of the manifest file, so that a later edit shows
 */
public record ReleaseRecord(String name, String by, LocalDate on, String manifest) {}
