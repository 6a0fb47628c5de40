package goniograph.sheet;

import java.util.List;

/**
 * The drawings of a movement, in order.
 *
 * @param panels one to three panels, and after them how it is not to be done
 */
public record Drawings(List<Panel> panels) {
  public Drawings {
    panels = List.copyOf(panels);
  }

  /**
   * One drawing.
   *
   * @param caption one or two words, "" without
   * @param svg the drawing, in millimetres, ids already its own
   * @param alternative what it shows, in words
   * @param floor how far below its top edge the floor is, mm; for the wrong way, how far below the
   *     top of the others its own top edge is
   * @param wrong true for how it is not to be done, which is no step and has no number
   */
  public record Panel(String caption, String svg, String alternative, double floor, boolean wrong) {

    /** A step of the movement. */
    public Panel(String caption, String svg, String alternative, double floor) {
      this(caption, svg, alternative, floor, false);
    }
  }

  /** How many steps the movement has. */
  public long steps() {
    return panels.stream().filter(panel -> !panel.wrong).count();
  }
}
