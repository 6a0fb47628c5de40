package goniograph.sheet;

import java.util.List;
import java.util.Optional;

/**
 * The drawings of a movement, in order.
 *
 * @param panels one to three panels, and after them how it is not to be done
 * @param motion the movement itself, for screens; empty where nothing moves
 */
public record Drawings(List<Panel> panels, Optional<Motion> motion) {
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

  /**
   * A flip book.
   *
   * @param id begins its ids and classes
   * @param svg all its frames
   * @param style shows one frame after the other; belongs into the page's style
   * @param play the words of the switch that lets it run
   */
  public record Motion(String id, String svg, String style, String play) {}
}
