package goniograph.figure;

import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.List;

/**
 * A scene drawn: one panel for each key frame, all at one scale. Drawn at the size it is printed;
 * for another size draw it anew.
 *
 * @param panels in the order of the movement
 * @param scale mm on paper for one cm of the scene
 * @param bodyLength the drawn body's stature at this scale, mm
 * @param refusals angles that the view does not show truly
 */
public record Figure(List<Panel> panels, double scale, double bodyLength, List<Refusal> refusals) {
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
      Framing.Framed framed = new Framing(scene, options).framed(steps);
      if (framed.sketches().get(0).startSeen()) {
        return figure(scene, options, steps, framed);
      }
    }
    List<Step> steps = Step.each(scene);
    return figure(scene, options, steps, new Framing(scene, options).framed(steps));
  }

  private static Figure figure(
      Scene scene, FigureOptions options, List<Step> steps, Framing.Framed framed) {
    List<Refusal> refusals = new ArrayList<>();
    framed.sketches().forEach(sketch -> refusals.addAll(sketch.refusals()));
    double height = framed.paper().scale();
    return new Figure(
        framed.panels(steps, options), height / scene.body().heightCm(), height, refusals);
  }

  /** The width of all panels side by side, mm. */
  public double width() {
    return panels.stream().mapToDouble(Panel::width).sum() + GAP * (panels.size() - 1);
  }

  /** The height of the panels, mm. */
  public double height() {
    return panels.get(0).height();
  }

  /** All panels side by side, as one SVG. */
  public String svg(String idPrefix, String title, String description) {
    SvgWriter svg = new SvgWriter(idPrefix, title, description, width(), height());
    double x = 0;
    for (Panel panel : panels) {
      svg.panel(panel.number(), x, 0, panel.width(), panel.height(), panel.paints());
      x += panel.width() + GAP;
    }
    return svg.finished();
  }
}
