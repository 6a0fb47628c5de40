package goniograph.render;

/**
 * A block that is longer than its place.
 *
 * @param block the block
 * @param lines how many lines are too many, at least 1
 * @param firstLine the first line with words that does not fit, "" where only a drawing does not
 *     fit
 */
public record Overflow(Block block, int lines, String firstLine) {}
