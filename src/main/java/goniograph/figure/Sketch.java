package goniograph.figure;

import goniograph.body.Side;
import goniograph.pose.Mark;
import goniograph.pose.Moment;
import goniograph.pose.Scene;
import goniograph.pose.Support;
import goniograph.type.TextOutline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * One panel before it is framed: the painted scene with its marks, in mm about the scene's origin.
 */
final class Sketch {
  private final Scene scene;
  private final FigureOptions options;
  private final Projection paper;
  private final SceneParts sceneParts;
  private final Step step;
  private final List<Part> parts;
  private final Geometry body;
  private final List<Paint> paints = new ArrayList<>();
  private final List<Refusal> refusals = new ArrayList<>();
  private final List<AngleArc> arcs = new ArrayList<>();
  private final List<String> numbers = new ArrayList<>();
  private final Geometry around;
  private Geometry covered;
  private Geometry arrows = Hulls.PAPER.createPolygon();
  private int marksFrom;
  private boolean startSeen;

  Sketch(
      Scene scene,
      FigureOptions options,
      SceneParts sceneParts,
      Projection paper,
      Step step,
      boolean showsStart) {
    this.scene = scene;
    this.options = options;
    this.paper = paper;
    this.step = step;
    this.sceneParts = sceneParts;
    this.parts =
        new DepthOrder(paper, step.key().skeleton(), carries())
            .sorted(sceneParts.of(step.key(), step.marked()));
    this.body = area(true);
    this.around = area(false);
    this.covered = Hulls.union(body, around);
    paints.addAll(new Painter(options.style(), options.weights(), parts).painted());
    marksFrom = paints.size();
    if (showsStart) {
      start();
    }
    arrows();
    if (options.therapist()) {
      measure();
    }
  }

  List<Paint> paints() {
    return paints;
  }

  List<Refusal> refusals() {
    return refusals;
  }

  /** True where a start outline was wanted and enough of it is seen. */
  boolean startSeen() {
    return startSeen;
  }

  /** What the drawing fills on paper: body, marks, and supports as far as they are near. */
  Envelope bounds() {
    Envelope bounds = new Envelope(body.getEnvelopeInternal());
    Envelope bodyBounds = new Envelope(bounds);
    parts.stream()
        .filter(part -> part.id().kind() == Kind.SUPPORT)
        .forEach(part -> bounds.expandToInclude(Framing.near(part, bodyBounds, paper)));
    bounds.expandBy(options.weights().working() / 2);
    for (Paint paint : paints.subList(marksFrom, paints.size())) {
      Envelope box = new Envelope(paint.shape().getEnvelopeInternal());
      if (paint instanceof Paint.Line line && !line.colour().equals(Style.PAPER)) {
        box.expandBy(line.width() / 2);
      }
      bounds.expandToInclude(box);
    }
    return bounds;
  }

  private Geometry area(boolean ofBody) {
    return Hulls.union(
        parts.stream()
            .filter(part -> (part.id().kind() != Kind.SUPPORT) == ofBody)
            .map(Part::outline)
            .toList());
  }

  private boolean[] carries() {
    List<Boolean> all = new ArrayList<>();
    for (Support support : scene.supports()) {
      support.boxes().forEach(box -> all.add(support.carries()));
    }
    boolean[] carries = new boolean[all.size()];
    for (int i = 0; i < carries.length; i++) {
      carries[i] = all.get(i);
    }
    return carries;
  }

  private void start() {
    StartOutline outline = new StartOutline(scene, sceneParts, options.weights());
    step.before()
        .map(before -> outline.lines(before.skeleton(), step.key().skeleton(), covered))
        .filter(lines -> !lines.isEmpty())
        .ifPresent(
            lines -> {
              startSeen = true;
              paints.addAll(outline.painted(lines, options.style()));
              cover(Hulls.widened(lines, options.weights().near() / 2));
            });
  }

  private void cover(Geometry shape) {
    covered = Hulls.union(covered, shape);
  }

  /** An arrow for each limb that has one, and at most one for head and trunk. */
  private void arrows() {
    if (step.way().size() < 2) {
      return;
    }
    List<Mark.Arrow> wanted =
        scene.marks().stream()
            .filter(Mark.Arrow.class::isInstance)
            .map(Mark.Arrow.class::cast)
            .toList();
    wanted.stream().filter(arrow -> arrow.side().isPresent()).forEach(this::arrow);
    wanted.stream()
        .filter(arrow -> arrow.side().isEmpty())
        .max(Comparator.comparingDouble(arrow -> length(way(arrow))))
        .ifPresent(this::arrow);
  }

  private static double length(List<Coordinate> way) {
    return way.get(0).distance(way.get(way.size() - 1));
  }

  private List<Coordinate> way(Mark.Arrow mark) {
    Side side = mark.side().orElse(nearSide());
    return step.way().stream()
        .map(moment -> paper.at(Tracked.point(moment.skeleton(), mark.part(), side)))
        .toList();
  }

  private void arrow(Mark.Arrow mark) {
    MovementArrow arrow = new MovementArrow(options.weights());
    for (MovementArrow.Shape shape : arrow.along(way(mark), covered)) {
      paints.addAll(arrow.painted(shape, options.style(), options.weights()));
      cover(shape.area());
      arrows = Hulls.union(arrows, shape.area());
    }
  }

  private void measure() {
    for (Mark mark : scene.marks()) {
      if (mark instanceof Mark.Angle angle) {
        angle(angle);
      } else if (mark instanceof Mark.Balance) {
        paints.addAll(
            new BalanceMark(paper, step.key().skeleton())
                .painted(options.style(), options.weights()));
      }
    }
  }

  private void angle(Mark.Angle mark) {
    Side side = mark.side().orElse(nearSide());
    Goniometer.at(step.key().skeleton(), mark.joint(), side)
        .filter(goniometer -> Math.abs(goniometer.degrees()) >= AngleArc.LEAST_DEGREES)
        .ifPresent(goniometer -> angle(mark, goniometer));
  }

  private void angle(Mark.Angle mark, Goniometer goniometer) {
    double seen = goniometer.seen(paper);
    if (seen < AngleArc.LEAST_SEEN) {
      refusals.add(new Refusal(mark.joint(), mark.side(), step.key().name(), seen));
      return;
    }
    AngleArc arc = new AngleArc(goniometer, paper);
    paints.addAll(arc.painted(options.style(), options.weights()));
    arcs.add(arc);
    numbers.add(Math.round(goniometer.degrees()) + "°");
  }

  private Side nearSide() {
    Moment key = step.key();
    return paper.facing(key.skeleton().pelvis().axes().z()) >= 0 ? Side.RIGHT : Side.LEFT;
  }

  /** The floor across the page, under everything. */
  void floor(Envelope page) {
    Floor floor = new Floor(paper, scene.keys().get(0).skeleton().pelvis().origin());
    List<Paint> painted = floor.painted(page, covered, options);
    paints.addAll(0, painted);
    marksFrom += painted.size();
  }

  /** Numbers and side words, in places within {@code page}. */
  void label(Envelope page) {
    options.lettering().ifPresent(lettering -> label(lettering, page));
  }

  private void label(Lettering lettering, Envelope page) {
    Labels labels = new Labels(Hulls.union(body, arrows), around, page);
    List<Paint> words = new ArrayList<>();
    for (int i = 0; i < arcs.size(); i++) {
      labels.take(Hulls.widened(arcs.get(i).arc(), options.weights().near()));
    }
    for (int i = 0; i < arcs.size(); i++) {
      words.add(word(lettering, labels, numbers.get(i), arcs.get(i).middle(), arcs.get(i).apex()));
    }
    WorkingLimb.of(scene)
        .filter(limb -> step.marked())
        .ifPresent(limb -> sideWord(limb, lettering, labels).forEach(words::add));
    paints.addAll(words);
  }

  private List<Paint> sideWord(WorkingLimb limb, Lettering lettering, Labels labels) {
    Coordinate at = limb.at(step.key().skeleton(), paper);
    Coordinate middle = body.getCentroid().getCoordinate();
    Optional<String> word = options.words().of(limb.side(), limb.group());
    List<Paint> paints = new ArrayList<>();
    word.map(text -> word(lettering, labels, text, at, middle)).ifPresent(paints::add);
    paints.stream().findFirst().ifPresent(set -> paints.addAll(0, leader(set.shape(), at)));
    return paints;
  }

  private List<Paint> leader(Geometry box, Coordinate at) {
    double width = options.weights().inner();
    double cased = width + 2 * options.weights().halo();
    return Leader.between(box, at, body)
        .map(
            line ->
                List.<Paint>of(
                    Paint.Line.solid(line, Style.PAPER, cased),
                    Paint.Line.solid(line, options.style().mark(), width)))
        .orElse(List.of());
  }

  private Paint word(
      Lettering lettering, Labels labels, String text, Coordinate at, Coordinate from) {
    TextOutline outline = lettering.set(text, options.weights().lettering());
    Labels.Place place = labels.place(outline, at, from);
    double casing = 1.5 * options.weights().halo();
    return new Paint.Word(
        place.box(), options.style().mark(), outline.path(), place.x(), place.y(), casing);
  }
}
