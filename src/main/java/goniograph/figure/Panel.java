package goniograph.figure;

import java.util.List;

/** One drawing of a figure, finished, at its size on paper. */
public final class Panel {
  private final int number;
  private final String moment;
  private final double width;
  private final double height;
  private final double floor;
  private final List<Layer> layers;

  Panel(int number, String moment, double width, double height, double floor, List<Layer> layers) {
    this.number = number;
    this.moment = moment;
    this.width = width;
    this.height = height;
    this.floor = floor;
    this.layers = List.copyOf(layers);
  }

  /** Its place in the sequence, from 1; 0 for the wrong way, which is none. */
  public int number() {
    return number;
  }

  /** The name of the key frame it shows. */
  public String moment() {
    return moment;
  }

  /** mm; the same for all panels of a figure. */
  public double width() {
    return width;
  }

  /** mm; the same for all panels of a figure. */
  public double height() {
    return height;
  }

  /**
   * How far below the top edge the floor is, straight under the body, mm; the lower edge where the
   * floor is not shown.
   */
  public double floor() {
    return floor;
  }

  List<Layer> layers() {
    return layers;
  }

  List<Paint> paints() {
    return layers.stream().flatMap(layer -> layer.paints().stream()).toList();
  }

  /**
   * The panel as SVG.
   *
   * @param idPrefix begins every id; different for every drawing on a page
   * @param title the exercise's title
   * @param description the text alternative
   */
  public String svg(String idPrefix, String title, String description) {
    SvgWriter svg = new SvgWriter(idPrefix, title, description, width, height);
    svg.panel(number, 0, 0, width, height, paints());
    return svg.finished();
  }
}
