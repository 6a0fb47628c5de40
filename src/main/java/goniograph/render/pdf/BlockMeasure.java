package goniograph.render.pdf;

import java.util.List;

/**
 * Where a block of the page stands on paper. Lengths in millimetres; a block's own edges are its
 * border edges.
 *
 * @param id the block's {@code data-fit}, else its {@code id}
 * @param page the page its top stands on, from 0
 * @param left from the left edge of the paper
 * @param top from the upper edge of that page
 * @param width with padding and border
 * @param height with padding and border
 * @param contentBottom lower edge of the lowest line or drawing in it, from the upper edge of the
 *     page; more than top + height when the content runs over a fixed height
 * @param lines its lines of text from top to bottom
 */
public record BlockMeasure(
    String id,
    int page,
    double left,
    double top,
    double width,
    double height,
    double contentBottom,
    List<Line> lines) {
  /**
   * One line of text.
   *
   * @param text what stands on it, in reading order
   * @param top upper edge, from the upper edge of its page
   * @param bottom lower edge
   * @param page the page it stands on, from 0
   * @param smallest the smallest size of type on it, in points
   * @param largest the largest size of type on it, in points
   */
  public record Line(
      String text, double top, double bottom, int page, double smallest, double largest) {

    /** Whether there is a word on it, and not only a number or a mark. */
    public boolean hasLetters() {
      return text.codePoints().anyMatch(Character::isLetter);
    }
  }

  public BlockMeasure {
    lines = List.copyOf(lines);
  }

  /** The lines that end lower than a height below the block's top, or on a later page. */
  public List<Line> linesBelow(double height) {
    return lines.stream()
        .filter(line -> line.page() > page || line.bottom() > top + height + 0.05)
        .toList();
  }
}
