package goniograph.sheet;

import java.util.List;

/**
 * The drawings of a movement, in order.
 *
 * @param panels one to three panels
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
   * @param floor how far below its top edge the floor is, mm
   */
  public record Panel(String caption, String svg, String alternative, double floor) {}
}
