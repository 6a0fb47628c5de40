package goniograph.figure;

import goniograph.pose.Camera;
import goniograph.pose.Moment;
import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * One scale and one frame for all panels of a figure: the floor lies at the same height and the
 * chair at the same place.
 */
final class Framing {
  /** White round the drawing, mm. */
  private static final double MARGIN = .8;

  /** Nothing is drawn larger than this, mm for a body height. */
  private static final double LARGEST = .42 * 170;

  /** Of a support, this much beyond the body belongs to the frame, in body heights. */
  private static final double SUPPORT_BESIDE = .25;

  private static final double SUPPORT_ABOVE = .05;

  private final Scene scene;
  private final FigureOptions options;
  private final Camera camera;
  private final Bodies bodies;

  Framing(Scene scene, FigureOptions options) {
    this.scene = scene;
    this.options = options;
    this.bodies = new Bodies(options.person());
    this.camera = options.otherSide() ? turned(scene.camera()) : scene.camera();
  }

  private static Camera turned(Camera camera) {
    return new Camera(180 - camera.yaw(), camera.elevation());
  }

  /** The sketches at the largest scale at which everything fits; marks do not shrink with it. */
  Framed framed(List<Step> steps) {
    double scale = fitting();
    Framed framed = sketched(steps, scale);
    for (int pass = 0; pass < 3 && less(framed) < 1; pass++) {
      scale *= .998 * less(framed);
      framed = sketched(steps, scale);
    }
    return framed;
  }

  private double less(Framed framed) {
    return Math.min(
        room(options.width()) / framed.bounds.getWidth(),
        room(options.height()) / framed.bounds.getHeight());
  }

  private static double room(double mm) {
    return mm - 2 * MARGIN;
  }

  private double fitting() {
    Projection paper = Projection.of(camera, 100);
    SceneParts parts = new SceneParts(paper, scene, bodies);
    Envelope body = new Envelope();
    for (Moment key : scene.keys()) {
      parts
          .body(key.skeleton())
          .forEach(p -> body.expandToInclude(p.outline().getEnvelopeInternal()));
    }
    Envelope whole = new Envelope(body);
    parts.supports().forEach(p -> whole.expandToInclude(near(p, body, paper)));
    double line = options.weights().support();
    double scale =
        Math.min(
            (room(options.width()) - line) / whole.getWidth(),
            (room(options.height()) - line) / whole.getHeight());
    return Math.min(LARGEST, 100 * scale);
  }

  /** What of a support is near enough to the body to be shown, and all of it below the body. */
  static Envelope near(Part support, Envelope body, Projection paper) {
    Envelope reach = new Envelope(body);
    reach.expandBy(paper.mm(SUPPORT_BESIDE), paper.mm(SUPPORT_ABOVE));
    Envelope whole = support.outline().getEnvelopeInternal();
    reach.expandToInclude(reach.centre().x, Math.max(reach.getMaxY(), whole.getMaxY()));
    return whole.intersection(reach);
  }

  private Framed sketched(List<Step> steps, double scale) {
    Projection paper = Projection.of(camera, scale);
    SceneParts parts = new SceneParts(paper, scene, bodies);
    List<Sketch> sketches = new ArrayList<>();
    Envelope bounds = new Envelope();
    for (int i = 0; i < steps.size(); i++) {
      boolean showsStart = scene.keys().size() > 1 && (i == 1 || steps.size() == 1);
      Sketch sketch =
          new Sketch(scene, options, parts, paper, steps.get(i), showsStart && wantsStart());
      sketches.add(sketch);
      bounds.expandToInclude(sketch.bounds());
    }
    return new Framed(sketches, bounds, paper);
  }

  private boolean wantsStart() {
    return options.together()
        || scene.marks().stream().anyMatch(goniograph.pose.Mark.Ghost.class::isInstance);
  }

  /** Sketches with what they fill. */
  record Framed(List<Sketch> sketches, Envelope bounds, Projection paper) {
    /** The panels, all with one frame. */
    List<Panel> panels(List<Step> steps, FigureOptions options) {
      double middle = (bounds.getMinX() + bounds.getMaxX()) / 2;
      Envelope page =
          new Envelope(
              middle - options.width() / 2 + MARGIN,
              middle + options.width() / 2 - MARGIN,
              bounds.getMaxY() + 2 * MARGIN - options.height(),
              bounds.getMaxY());
      Envelope whole = new Envelope(bounds);
      for (Sketch sketch : sketches) {
        sketch.label(page);
        whole.expandToInclude(sketch.bounds());
      }
      double left = middle - options.width() / 2;
      double top = whole.getMinY() - MARGIN;
      double height = whole.getHeight() + 2 * MARGIN;
      AffineTransformation move = AffineTransformation.translationInstance(-left, -top);
      Envelope across = new Envelope(left, left + options.width(), top, top + height);
      sketches.forEach(sketch -> sketch.floor(across));
      List<Panel> panels = new ArrayList<>();
      for (int i = 0; i < sketches.size(); i++) {
        List<Paint> paints =
            sketches.get(i).paints().stream().map(paint -> paint.moved(move)).toList();
        panels.add(
            new Panel(i + 1, steps.get(i).key().name(), options.width(), height, -top, paints));
      }
      return panels;
    }
  }
}
