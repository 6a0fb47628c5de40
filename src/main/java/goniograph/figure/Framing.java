package goniograph.figure;

import goniograph.pose.Camera;
import goniograph.pose.Mark;
import goniograph.pose.Moment;
import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * One scale and one frame for all panels of a figure: the floor lies at the same height and the
 * chair at the same place.
 */
final class Framing {
  /** White round the drawing, mm. */
  static final double MARGIN = .8;

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

  /**
   * The sketches at the largest scale at which everything fits; marks do not shrink with it. Bodies
   * are shaped once, at the largest scale of all, and then only scaled.
   */
  Framed framed(List<Step> steps) {
    double shaped = Crop.largest(scene);
    Projection paper = Projection.of(camera, shaped);
    SceneParts parts = new SceneParts(paper, scene, bodies);
    Crop crop = new Crop(scene, paper);
    List<Stage> stages = steps.stream().map(step -> Stage.of(scene, parts, paper, step)).toList();
    Envelope content = new Envelope();
    for (int i = 0; i < steps.size(); i++) {
      content.expandToInclude(crop.of(steps.get(i).key(), stages.get(i)));
    }
    double scale = shaped * Math.min(1, fitting(content));
    Framed framed = sketched(steps, stages, content, scale / shaped);
    for (int pass = 0; pass < 3 && less(framed.bounds) < 1; pass++) {
      scale *= .998 * less(framed.bounds);
      framed = sketched(steps, stages, content, scale / shaped);
    }
    return framed;
  }

  /** The wrong way at the scale of the others, cut down to what is wrong about it. */
  Optional<Panel> wrong(double scale) {
    return scene.wrong().map(moment -> wrong(Step.wrong(moment), scale));
  }

  private Panel wrong(Step step, double scale) {
    Projection paper = Projection.of(camera, scale);
    SceneParts parts = new SceneParts(paper, scene, bodies);
    Stage stage = Stage.of(scene, parts, paper, step);
    Moment last = scene.keys().get(scene.keys().size() - 1);
    Envelope shown = Crop.changed(stage, parts.body(last.skeleton()), paper);
    shown.expandBy(MARGIN + options.weights().near());
    Sketch sketch = new Sketch(scene, options, paper, step, stage, Optional.empty(), shown);
    List<Layer> layers = new ArrayList<>();
    sketch.painted(shown, List.of()).forEach(layer -> layers.add(layer.within(shown)));
    layers.add(new Layer(Layer.What.CROSS, Cross.over(shown, options.style(), options.weights())));
    Envelope frame = new Envelope(shown);
    Lettered.below(options, shown)
        .ifPresent(
            word -> {
              layers.add(word);
              frame.expandToInclude(word.bounds());
            });
    return panel(0, step, frame, layers);
  }

  private double fitting(Envelope content) {
    double line = options.weights().support();
    return Math.min(
        (room(options.width()) - line) / content.getWidth(),
        (room(options.height()) - line) / content.getHeight());
  }

  private double less(Envelope bounds) {
    return Math.min(
        room(options.width()) / bounds.getWidth(), room(options.height()) / bounds.getHeight());
  }

  private static double room(double mm) {
    return mm - 2 * MARGIN;
  }

  private Framed sketched(List<Step> steps, List<Stage> stages, Envelope content, double k) {
    Projection paper = Projection.of(camera, k * Crop.largest(scene));
    Envelope bounds = scaled(content, k);
    bounds.expandBy(options.weights().working() / 2);
    Envelope page = page(bounds);
    List<Sketch> sketches = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      Optional<SceneParts> start =
          showsStart(i, steps.size())
              ? Optional.of(new SceneParts(paper, scene, bodies))
              : Optional.empty();
      Stage stage = stages.get(i).scaled(k);
      Sketch sketch = new Sketch(scene, options, paper, steps.get(i), stage, start, page);
      sketches.add(sketch);
      bounds.expandToInclude(sketch.marks());
    }
    return new Framed(steps, sketches, bounds, paper);
  }

  private static Envelope scaled(Envelope box, double k) {
    return new Envelope(k * box.getMinX(), k * box.getMaxX(), k * box.getMinY(), k * box.getMaxY());
  }

  /** A panel's room round what it shows; what is free lies above. */
  private Envelope page(Envelope bounds) {
    double middle = (bounds.getMinX() + bounds.getMaxX()) / 2;
    return new Envelope(
        middle - options.width() / 2 + MARGIN,
        middle + options.width() / 2 - MARGIN,
        bounds.getMaxY() + 2 * MARGIN - options.height(),
        bounds.getMaxY());
  }

  private boolean showsStart(int panel, int panels) {
    boolean wanted =
        options.together() || scene.marks().stream().anyMatch(Mark.Ghost.class::isInstance);
    return wanted && scene.keys().size() > 1 && (panel == 1 || panels == 1);
  }

  private static Panel panel(int number, Step step, Envelope frame, List<Layer> layers) {
    AffineTransformation move =
        AffineTransformation.translationInstance(-frame.getMinX(), -frame.getMinY());
    return new Panel(
        number,
        step.key().name(),
        frame.getWidth(),
        frame.getHeight(),
        Math.min(frame.getHeight(), Math.max(0, -frame.getMinY())),
        layers.stream().map(layer -> layer.within(frame).moved(move)).toList());
  }

  /** Sketches with what they fill. */
  final class Framed {
    private final List<Step> steps;
    private final List<Sketch> sketches;
    private final Envelope bounds;
    private final Projection paper;

    private Framed(List<Step> steps, List<Sketch> sketches, Envelope bounds, Projection paper) {
      this.steps = steps;
      this.sketches = sketches;
      this.bounds = bounds;
      this.paper = paper;
    }

    double scale() {
      return paper.scale();
    }

    List<Sketch> sketches() {
      return sketches;
    }

    /** The panels, all with one frame. */
    List<Panel> panels() {
      Envelope page = page(bounds);
      Envelope whole = new Envelope(bounds);
      List<List<Layer>> labels = new ArrayList<>();
      for (int i = 0; i < sketches.size(); i++) {
        int number = sketches.size() > 1 ? i + 1 : 0;
        labels.add(sketches.get(i).labels(page, bounds, number));
        labels.get(i).forEach(label -> whole.expandToInclude(label.bounds()));
      }
      Envelope frame =
          new Envelope(
              page.getMinX() - MARGIN,
              page.getMaxX() + MARGIN,
              whole.getMinY() - MARGIN,
              whole.getMaxY() + MARGIN);
      List<Panel> panels = new ArrayList<>();
      for (int i = 0; i < sketches.size(); i++) {
        List<Layer> layers = sketches.get(i).painted(frame, labels.get(i));
        panels.add(panel(i + 1, steps.get(i), frame, layers));
      }
      return panels;
    }
  }
}
