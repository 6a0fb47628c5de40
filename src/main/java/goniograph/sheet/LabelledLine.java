package goniograph.sheet;

/**
 * One line with its label.
 *
 * @param label for instance "Why"
 * @param words the line
 */
public record LabelledLine(String label, String words) {}
