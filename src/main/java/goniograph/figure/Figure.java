package goniograph.figure;

import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A scene drawn: one panel for each key frame, all at one scale. Drawn at the size it is printed;
 * for another size draw it anew.
 *
 * @param panels in the order of the movement
 * @param scale mm on paper for one cm of the scene
 * @param bodyLength the drawn body's stature at this scale, mm
 * @param refusals marks that the view does not show truly
 * @param wrong how it is not to be done, crossed out; smaller than the panels
 * @param words numbers and order of the panels
 */
public record Figure(
    List<Panel> panels,
    double scale,
    double bodyLength,
    List<Refusal> refusals,
    Optional<Panel> wrong,
    PanelWords words) {
  /** White between panels that stand side by side, mm. */
  private static final double GAP = 3;

  public Figure {
    panels = List.copyOf(panels);
    refusals = List.copyOf(refusals);
  }

  /** Draws a scene. */
  public static Figure of(Scene scene, FigureOptions options) {
    return drawn(options.person().wheelchair() ? Wheelchair.in(scene) : scene, options);
  }

  private static Figure drawn(Scene scene, FigureOptions options) {
    if (options.together() && scene.keys().size() == 2) {
      List<Step> steps = Step.together(scene);
      Framing framing = new Framing(scene, options);
      Framing.Framed framed = framing.framed(steps);
      if (framed.sketches().get(0).startSeen()) {
        return figure(scene, options, framing, framed);
      }
    }
    Framing framing = new Framing(scene, options);
    return figure(scene, options, framing, framing.framed(Step.each(scene)));
  }

  private static Figure figure(
      Scene scene, FigureOptions options, Framing framing, Framing.Framed framed) {
    List<Refusal> refusals = new ArrayList<>();
    framed.sketches().forEach(sketch -> refusals.addAll(sketch.refusals()));
    double height = framed.scale();
    return new Figure(
        framed.panels(),
        height / scene.body().heightCm(),
        height,
        refusals,
        framing.wrong(height),
        options.panelWords());
  }

  /** The panels and the wrong way, from left to right. */
  private List<Panel> row() {
    List<Panel> row = new ArrayList<>(panels);
    wrong.ifPresent(row::add);
    if (words.rightToLeft()) {
      Collections.reverse(row);
    }
    return row;
  }

  /** The width of all panels side by side, mm. */
  public double width() {
    return row().stream().mapToDouble(Panel::width).sum() + GAP * (row().size() - 1);
  }

  /** The height of the panels, mm. */
  public double height() {
    return row().stream().mapToDouble(Panel::height).max().orElse(0);
  }

  /** All panels side by side on one line, as one SVG. */
  public String svg(String idPrefix, String title, String description) {
    SvgWriter svg = new SvgWriter(idPrefix, title, description, width(), height());
    double x = 0;
    for (Panel panel : row()) {
      double y = height() - panel.height();
      svg.panel(panel.number(), x, y, panel.width(), panel.height(), panel.paints());
      x += panel.width() + GAP;
    }
    return svg.finished();
  }
}
