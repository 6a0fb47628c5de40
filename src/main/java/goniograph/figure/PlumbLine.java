package goniograph.figure;

import goniograph.body.Landmarks;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** A plumb line through the near shoulder, with rings at ear and shoulder and a bob at its end. */
final class PlumbLine {
  /** How far it reaches above the ear and below the shoulder, in body heights. */
  private static final double BEYOND = .10;

  private static final List<Double> DASH = List.of(2.4, .8, .5, .8);

  private final Coordinate ear;
  private final Coordinate shoulder;
  private final Coordinate top;
  private final Coordinate bottom;

  PlumbLine(Projection paper, Skeleton skeleton, Side near) {
    Vec joint = Landmarks.shoulder(skeleton, near);
    Vec tragus = Landmarks.tragus(skeleton, near);
    this.ear = paper.at(tragus);
    this.shoulder = paper.at(joint);
    this.top = paper.at(new Vec(joint.x(), tragus.y() + BEYOND, joint.z()));
    this.bottom = paper.at(joint.minus(new Vec(0, BEYOND, 0)));
  }

  List<Paint> painted(Style style, Weights weights) {
    double width = weights.near();
    Geometry line = Hulls.line(top, bottom);
    List<Paint> paints = new ArrayList<>();
    paints.add(Paint.Line.solid(line, Style.PAPER, width + 2 * weights.halo()));
    paints.add(new Paint.Line(line, style.mark(), width, false, DASH));
    paints.addAll(ring(ear, style, weights));
    paints.addAll(ring(shoulder, style, weights));
    Geometry bob = bob(2.4 * width);
    paints.add(Paint.Line.solid(bob.getBoundary(), Style.PAPER, 2 * weights.halo()));
    paints.add(new Paint.Area(bob, style.mark()));
    return paints;
  }

  /** A ring on a point of the body. */
  static List<Paint> ring(Coordinate at, Style style, Weights weights) {
    Geometry disc = Hulls.circle(at, 2 * weights.near());
    return List.of(
        new Paint.Area(Hulls.circle(at, 2 * weights.near() + weights.halo()), Style.PAPER),
        Paint.Line.solid(disc.getBoundary(), style.mark(), weights.near()));
  }

  private Geometry bob(double half) {
    return Hulls.hull(
        List.of(
            bottom,
            new Coordinate(bottom.x + half, bottom.y + 1.4 * half),
            new Coordinate(bottom.x, bottom.y + 3.4 * half),
            new Coordinate(bottom.x - half, bottom.y + 1.4 * half)));
  }
}
