package goniograph.figure;

import goniograph.body.BasePosture;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import goniograph.pose.BestView;
import goniograph.pose.Goniometer;
import goniograph.pose.Mark;
import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Draws the marks of one panel, one after another, each clear of those before it. */
final class Marker {
  private final Scene scene;
  private final FigureOptions options;
  private final Style style;
  private final Weights weights;
  private final Projection paper;
  private final Step step;
  private final Stage stage;
  private final Skeleton skeleton;
  private final Covered covered;
  private final List<Layer> layers = new ArrayList<>();
  private final List<Refusal> refusals = new ArrayList<>();
  private final List<AngleArc> arcs = new ArrayList<>();

  Marker(Scene scene, FigureOptions options, Projection paper, Step step, Stage stage) {
    this.scene = scene;
    this.options = options;
    this.style = options.style();
    this.weights = options.weights();
    this.paper = paper;
    this.step = step;
    this.stage = stage;
    this.skeleton = step.key().skeleton();
    this.covered = stage.covered(part -> true);
  }

  List<Layer> layers() {
    return layers;
  }

  List<Refusal> refusals() {
    return refusals;
  }

  /** The angles that were drawn. */
  List<AngleArc> arcs() {
    return arcs;
  }

  /** The start as an outline; false where too little of it would be seen. */
  boolean start(SceneParts parts) {
    StartOutline outline = new StartOutline(scene, parts, weights);
    Optional<Geometry> lines =
        step.before()
            .map(before -> outline.lines(before.skeleton(), skeleton, stage.parts()))
            .filter(seen -> !seen.isEmpty());
    lines.ifPresent(seen -> add(Layer.What.START, outline.painted(seen, style)));
    return lines.isPresent();
  }

  /** All marks but the start; angles and balance on the therapist's copy alone. */
  void mark(Envelope page) {
    for (Mark mark : scene.marks()) {
      if (mark instanceof Mark.Plumb) {
        add(Layer.What.PLUMB, new PlumbLine(paper, skeleton, nearSide()).painted(style, weights));
      } else if (mark instanceof Mark.Target target && step.marked()) {
        target(target);
      } else if (mark instanceof Mark.Landmark landmark && step.marked()) {
        landmark(landmark);
      } else if (mark instanceof Mark.Balance && options.therapist()) {
        add(Layer.What.BALANCE, new BalanceMark(paper, skeleton).painted(style, weights));
      } else if (mark instanceof Mark.Angle angle && options.therapist()) {
        angle(angle);
      }
    }
    arrows(page);
  }

  private void add(Layer.What what, List<Paint> paints) {
    Layer layer = new Layer(what, paints);
    layers.add(layer);
    layer.ink().forEach(covered::add);
  }

  private void target(Mark.Target mark) {
    TargetArea target = new TargetArea(paper, skeleton, mark);
    Geometry area = target.shape(stage.parts(), nearSide());
    if (area.isEmpty()) {
      refuse(mark.part(), mark.side(), 0, "back".equals(scene.view()) ? "front" : "back");
    } else {
      add(Layer.What.TARGET, target.painted(area, style, weights));
    }
  }

  private void landmark(Mark.Landmark mark) {
    Coordinate from = point(skeleton, mark.from(), mark.fromSide());
    Coordinate to = point(skeleton, mark.to(), mark.toSide());
    add(Layer.What.LANDMARK, LandmarkLine.painted(from, to, style, weights));
  }

  private Coordinate point(Skeleton of, String part, Optional<Side> side) {
    return paper.at(Tracked.point(of, part, side.orElse(nearSide())));
  }

  /** An arrow for each limb that has one, and at most one for head and trunk. */
  private void arrows(Envelope page) {
    List<Mark.Arrow> wanted = new ArrayList<>();
    for (Mark mark : scene.marks()) {
      if (mark instanceof Mark.Arrow arrow && way(arrow).size() > 1) {
        wanted.add(arrow);
      }
    }
    wanted.stream().filter(arrow -> arrow.side().isPresent()).forEach(a -> arrow(a, page));
    wanted.stream()
        .filter(arrow -> arrow.side().isEmpty())
        .max(Comparator.comparingDouble(arrow -> length(way(arrow))))
        .ifPresent(a -> arrow(a, page));
  }

  private static double length(List<Coordinate> way) {
    return way.get(0).distance(way.get(way.size() - 1));
  }

  /** The way on paper: where the author told it, where the point goes, or where it pushes. */
  private List<Coordinate> way(Mark.Arrow mark) {
    Side side = mark.side().orElse(nearSide());
    if (step.marked() && (mark.way().told() || scene.keys().size() == 1)) {
      return new Push(scene, step.key(), mark, side).way().stream().map(paper::at).toList();
    }
    if (mark.way().told()) {
      return List.of();
    }
    return step.way().stream().map(m -> point(m.skeleton(), mark.part(), mark.side())).toList();
  }

  private void arrow(Mark.Arrow mark, Envelope page) {
    MovementArrow arrow = new MovementArrow(weights);
    arrow
        .along(way(mark), mark.way() == Mark.Way.BOTH_WAYS, covered, page)
        .ifPresent(shape -> add(Layer.What.ARROW, arrow.painted(shape, style, weights)));
  }

  private void angle(Mark.Angle mark) {
    Goniometer.at(skeleton, mark.joint(), mark.side().orElse(nearSide()))
        .filter(goniometer -> Math.abs(goniometer.degrees()) >= AngleArc.LEAST_DEGREES)
        .ifPresent(goniometer -> angle(mark, goniometer));
  }

  private void angle(Mark.Angle mark, Goniometer goniometer) {
    double seen = goniometer.seen(paper.toViewer());
    if (seen < AngleArc.LEAST_SEEN) {
      BasePosture base = BasePosture.of(scene.base()).orElse(BasePosture.STANDING);
      Side near = mark.side().orElse(nearSide());
      refuse(mark.joint(), mark.side(), seen, BestView.of(goniometer::seen, base, near).word());
      return;
    }
    AngleArc arc = new AngleArc(goniometer, paper);
    add(Layer.What.ANGLE, arc.painted(style, weights));
    arcs.add(arc);
  }

  private void refuse(String what, Optional<Side> side, double seen, String better) {
    refusals.add(new Refusal(what, side, step.key().name(), seen, better));
  }

  private Side nearSide() {
    Vec right = skeleton.pelvis().axes().z();
    return paper.facing(right) >= 0 ? Side.RIGHT : Side.LEFT;
  }
}
