package goniograph.register;

import java.time.LocalDate;

/**
 * Which piece of source text a piece of a language version was made from.
 *
 * @param source digest of the source piece
 * @param target digest of the translated piece
 * @param by role id of the translator
 * @param on the day it was recorded
 */
public record PieceRecord(String source, String target, String by, LocalDate on) {}
