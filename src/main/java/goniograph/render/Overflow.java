package goniograph.render;

/**
 * A block that is longer than its place.
 *
 * @param block its name, for instance {@code steps}
 * @param lines how many lines are too many, at least 1
 * @param firstLine the first line that does not fit, "" where a drawing does not fit
 */
public record Overflow(String block, int lines, String firstLine) {}
