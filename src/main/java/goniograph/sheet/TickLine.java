package goniograph.sheet;

/**
 * A line that someone may tick by hand.
 *
 * @param words the line
 */
public record TickLine(String words) {}
