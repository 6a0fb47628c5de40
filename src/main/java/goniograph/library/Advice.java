package goniograph.library;

/**
 * An advice topic.
 *
 * @param common what every entry has
 * @param dose the pain limit its text and statements take; nothing else of a dose
 */
public record Advice(Common common, LocatedDose dose) implements Entry {}
