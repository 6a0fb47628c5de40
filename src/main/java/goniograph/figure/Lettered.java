package goniograph.figure;

import goniograph.type.TextOutline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Words of one panel, set as outlines and put where they are free. */
record Lettered(Lettering lettering, FigureOptions options, Labels labels) {
  /** The ring of a panel's number against the size of its lettering. */
  private static final double RING = 1.45;

  /** White round the word at the wrong way, mm. */
  private static final double AIR = .8;

  /** A word near {@code at}, on the side away from {@code from}. */
  Optional<Layer> word(String text, Coordinate at, Coordinate from) {
    TextOutline outline = set(text);
    return placed(outline, at, from)
        .map(box -> new Layer(Layer.What.WORD, List.of(paint(outline, box))));
  }

  /** The same with a thin line to what it names, where it stands away from it. */
  Optional<Layer> led(String text, Coordinate at, Coordinate from) {
    TextOutline outline = set(text);
    return placed(outline, at, from)
        .map(
            box -> {
              List<Paint> paints = new ArrayList<>(leader(Hulls.PAPER.toGeometry(box), at));
              paints.add(paint(outline, box));
              return new Layer(Layer.What.WORD, paints);
            });
  }

  /** A panel's number in a ring, at the corner where reading begins. */
  Optional<Layer> number(int number, Envelope page, Envelope bounds) {
    String text = options.panelWords().number().apply(number);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    double ring = RING * options.weights().lettering();
    double x = options.panelWords().rightToLeft() ? page.getMaxX() : page.getMinX();
    Coordinate corner = new Coordinate(x, bounds.getMinY());
    double inward = options.panelWords().rightToLeft() ? 1 : -1;
    return labels
        .place(ring, ring, corner, new Coordinate(x + inward, bounds.getMinY() - 1))
        .map(box -> new Layer(Layer.What.NUMBER, ringed(text, box, ring)));
  }

  /** What stands below the wrong way, on white. */
  static Optional<Layer> below(FigureOptions options, Envelope shown) {
    String text = options.panelWords().notLikeThis();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    return options
        .lettering()
        .map(lettering -> lettering.set(text, options.weights().lettering()))
        .map(outline -> below(outline, options, shown));
  }

  private static Layer below(TextOutline outline, FigureOptions options, Envelope shown) {
    double half = (outline.right() - outline.left()) / 2 + AIR;
    double top = shown.getMaxY();
    Envelope box =
        new Envelope(
            shown.centre().x - half,
            shown.centre().x + half,
            top,
            top + outline.bottom() - outline.top() + 2 * AIR);
    Envelope strip = new Envelope(box);
    strip.expandToInclude(shown.getMinX(), top);
    strip.expandToInclude(shown.getMaxX(), top);
    return new Layer(
        Layer.What.WORD,
        List.of(
            new Paint.Area(Hulls.PAPER.toGeometry(strip), Style.PAPER),
            paint(outline, box, options)));
  }

  private List<Paint> ringed(String text, Envelope box, double ring) {
    double stroke = 1.2 * options.weights().near();
    Geometry disc = Hulls.circle(box.centre(), (ring - stroke) / 2);
    return List.of(
        new Paint.Area(disc, Style.PAPER),
        Paint.Line.solid(disc.getBoundary(), options.style().line(Role.NEAR), stroke),
        paint(set(text), box));
  }

  private TextOutline set(String text) {
    return lettering.set(text, options.weights().lettering());
  }

  private Optional<Envelope> placed(TextOutline outline, Coordinate at, Coordinate from) {
    return labels.place(
        outline.right() - outline.left(), outline.bottom() - outline.top(), at, from);
  }

  private Paint paint(TextOutline outline, Envelope box) {
    return paint(outline, box, options);
  }

  private static Paint paint(TextOutline outline, Envelope box, FigureOptions options) {
    Coordinate middle = box.centre();
    return new Paint.Word(
        Hulls.PAPER.toGeometry(box),
        options.style().mark(),
        outline.path(),
        middle.x - (outline.left() + outline.right()) / 2,
        middle.y - (outline.top() + outline.bottom()) / 2,
        1.5 * options.weights().halo());
  }

  private List<Paint> leader(Geometry box, Coordinate at) {
    double width = options.weights().inner();
    double cased = width + 2 * options.weights().halo();
    return Leader.between(box, at)
        .map(
            line ->
                List.<Paint>of(
                    Paint.Line.solid(line, Style.PAPER, cased),
                    Paint.Line.solid(line, options.style().mark(), width)))
        .orElse(List.of());
  }
}
