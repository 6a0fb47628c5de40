package goniograph.register;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Something that must no longer be used.
 *
 * @param id of an entry or a statement
 * @param reason why, in words
 * @param by role id of who decided it
 * @param on since when
 * @param replacedBy id of what to use in its place, if there is such a thing
 */
public record Recall(
    String id, String reason, String by, LocalDate on, Optional<String> replacedBy) {}
