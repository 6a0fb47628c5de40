package goniograph.figure;

import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** One panel before it is framed: the parts and their marks, in mm about the scene's origin. */
final class Sketch {
  private final Scene scene;
  private final FigureOptions options;
  private final Weights weights;
  private final Projection paper;
  private final Step step;
  private final Stage stage;
  private final Marker marker;
  private final boolean startSeen;

  /**
   * @param page where the marks shall stay
   */
  Sketch(
      Scene scene,
      FigureOptions options,
      Projection paper,
      Step step,
      Stage stage,
      Optional<SceneParts> start,
      Envelope page) {
    this.scene = scene;
    this.options = options;
    this.weights = options.weights();
    this.paper = paper;
    this.step = step;
    this.stage = stage;
    this.marker = new Marker(scene, options, paper, step, stage);
    this.startSeen = start.filter(marker::start).isPresent();
    if (!step.wrong()) {
      marker.mark(page);
    }
  }

  List<Refusal> refusals() {
    return marker.refusals();
  }

  /** True where a start outline was wanted and enough of it is seen. */
  boolean startSeen() {
    return startSeen;
  }

  /** What the marks fill. */
  Envelope marks() {
    return filled(marker.layers());
  }

  private static Envelope filled(List<Layer> layers) {
    Envelope filled = new Envelope();
    for (Layer layer : layers) {
      layer.ink().forEach(ink -> filled.expandToInclude(ink.getEnvelopeInternal()));
    }
    return filled;
  }

  /**
   * Numbers and words.
   *
   * @param page where they must stay
   * @param bounds what all panels fill
   * @param number the panel's number; 0 for a panel that has none
   */
  List<Layer> labels(Envelope page, Envelope bounds, int number) {
    return options
        .lettering()
        .map(lettering -> labels(lettering, page, bounds, number))
        .orElse(List.of());
  }

  private List<Layer> labels(Lettering lettering, Envelope page, Envelope bounds, int number) {
    Labels labels =
        new Labels(stage.covered(Stage::ofPerson), stage.covered(p -> !Stage.ofPerson(p)), page);
    for (Layer layer : marker.layers()) {
      layer.ink().forEach(labels::take);
    }
    Lettered lettered = new Lettered(lettering, options, labels);
    List<Layer> layers = new ArrayList<>();
    if (number > 0) {
      lettered.number(number, page, bounds).ifPresent(layers::add);
    }
    for (AngleArc arc : marker.arcs()) {
      lettered.word(arc.number(), arc.middle(), arc.apex()).ifPresent(layers::add);
    }
    WorkingLimb.of(scene)
        .filter(limb -> step.marked())
        .flatMap(limb -> sideWord(limb, lettered))
        .ifPresent(layers::add);
    return layers;
  }

  private Optional<Layer> sideWord(WorkingLimb limb, Lettered lettered) {
    Coordinate at = limb.at(step.key().skeleton(), paper, scene.focus());
    return options
        .words()
        .of(limb.side(), limb.group())
        .flatMap(word -> lettered.led(word, at, stage.middle()));
  }

  /** Everything, floor first. */
  List<Layer> painted(Envelope panel, List<Layer> labels) {
    Painter painter = new Painter(options.style(), weights, stage.parts());
    Floor floor = new Floor(paper, scene.keys().get(0).skeleton().pelvis().origin());
    List<Layer> layers = new ArrayList<>();
    layers.add(new Layer(Layer.What.FLOOR, floor.painted(panel, painter, options)));
    layers.add(new Layer(Layer.What.BODY, painter.painted()));
    layers.addAll(marker.layers());
    layers.addAll(labels);
    return layers;
  }
}
