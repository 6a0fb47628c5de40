package goniograph.figure;

import goniograph.pose.Goniometer;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The arc of a goniometer in its true plane, with both arms. */
final class AngleArc {
  /** Below this share of its true width an angle misleads and is not drawn. */
  static final double LEAST_SEEN = .35;

  /** An arc smaller than this cannot be told from a line. */
  static final double LEAST_DEGREES = 3;

  private final Goniometer goniometer;
  private final Projection paper;

  AngleArc(Goniometer goniometer, Projection paper) {
    this.goniometer = goniometer;
    this.paper = paper;
  }

  Geometry arc() {
    List<Coordinate> points = new ArrayList<>();
    for (int i = 0; i <= 24; i++) {
      points.add(paper.at(goniometer.onArc(i / 24.0, 1)));
    }
    return Hulls.line(points.toArray(new Coordinate[0]));
  }

  private Geometry arm(double part) {
    return Hulls.line(
        paper.at(goniometer.onArc(part, goniometer.bare())), paper.at(goniometer.onArc(part, 1.2)));
  }

  /** The middle of the arc, where its number wants to stand. */
  Coordinate middle() {
    return paper.at(goniometer.onArc(.5, 1));
  }

  /** The angle in space, to the nearest degree. */
  String number() {
    return Math.round(goniometer.degrees()) + "°";
  }

  Coordinate apex() {
    return paper.at(goniometer.apex());
  }

  List<Paint> painted(Style style, Weights weights) {
    double width = 1.2 * weights.near();
    double cased = width + 2 * weights.halo();
    List<Paint> paints = new ArrayList<>();
    for (Geometry line : List.of(arm(0), arm(1), arc())) {
      paints.add(Paint.Line.solid(line, Style.PAPER, cased));
    }
    Geometry pin = Hulls.circle(apex(), 1.5 * weights.near());
    paints.add(new Paint.Line(arm(0), style.mark(), weights.near(), false, List.of(1.2, .8)));
    paints.add(Paint.Line.solid(arm(1), style.mark(), weights.near()));
    paints.add(Paint.Line.solid(arc(), style.mark(), width));
    paints.add(new Paint.Area(pin, Style.PAPER));
    paints.add(Paint.Line.solid(pin.getBoundary(), style.mark(), weights.near()));
    return paints;
  }
}
