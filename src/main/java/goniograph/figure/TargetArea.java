package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import goniograph.pose.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The place where the reader shall feel it: a patch of a limb's surface, or a round about a point,
 * white with close hatching, as far as it faces the viewer.
 */
final class TargetArea {
  /** How far a patch reaches round the limb to both sides, degrees. */
  private static final double AROUND = 62;

  private static final int ACROSS = 9;
  private static final int ALONG = 13;

  /** The radius of a round about a point, in body heights. */
  private static final double ROUND = .040;

  private final Projection paper;
  private final Skeleton skeleton;
  private final Mark.Target mark;

  TargetArea(Projection paper, Skeleton skeleton, Mark.Target mark) {
    this.paper = paper;
    this.skeleton = skeleton;
    this.mark = mark;
  }

  /**
   * A patch on a limb.
   *
   * @param from where it begins on the bone, 0 to 1
   * @param to where it ends
   * @param radius of the limb there, in body heights
   */
  private record Patch(
      Limb limb, Mark.Face face, double from, double to, double radius, double back) {}

  /** The area on paper; empty where it faces away. */
  Geometry shape(List<Part> parts, Side near) {
    Side side = mark.side().orElse(near);
    return patch().map(patch -> patch(patch, side, parts)).orElseGet(() -> round(side, parts));
  }

  private Optional<Patch> patch() {
    return switch (mark.part()) {
      case "calf" -> Optional.of(new Patch(Limb.SHANK, Mark.Face.BACK, .10, .62, .036, .008));
      case "shin" -> Optional.of(new Patch(Limb.SHANK, Mark.Face.FRONT, .15, .75, .032, .005));
      case "thigh", "leg" ->
          Optional.of(new Patch(Limb.THIGH, face(Mark.Face.FRONT), .22, .88, .046, 0));
      case "forearm" ->
          Optional.of(new Patch(Limb.FOREARM, face(Mark.Face.FRONT), .12, .80, .024, 0));
      case "arm" -> Optional.of(new Patch(Limb.UPPER_ARM, face(Mark.Face.FRONT), .3, .92, .032, 0));
      default -> Optional.empty();
    };
  }

  private Mark.Face face(Mark.Face usual) {
    return mark.face().orElse(usual);
  }

  private Geometry patch(Patch patch, Side side, List<Part> parts) {
    Frame frame = skeleton.limb(patch.limb, side);
    double sign = patch.face == Mark.Face.FRONT ? 1 : -1;
    List<List<Coordinate>> rims = new ArrayList<>();
    for (int i = 0; i < ALONG; i++) {
      double t = i / (ALONG - 1.0);
      double swell = .8 + .2 * Math.sin(Math.PI * t);
      List<Coordinate> rim = rim(patch, frame, sign, t, AROUND * swell);
      if (rim.size() > 1) {
        rims.add(rim);
      }
    }
    if (rims.size() < 3) {
      return Hulls.PAPER.createPolygon();
    }
    return within(Hulls.chain(rims), Kind.valueOf(patch.limb.name()), side, parts);
  }

  /** The points of a cross-section's arc that face the viewer, from edge to edge. */
  private List<Coordinate> rim(Patch patch, Frame frame, double sign, double t, double around) {
    double along = patch.from + t * (patch.to - patch.from);
    double length = goniograph.body.Lengths.of(patch.limb);
    List<Coordinate> rim = new ArrayList<>();
    for (int i = 0; i < ACROSS; i++) {
      double turn = Math.toRadians(around * (2 * i / (ACROSS - 1.0) - 1));
      Vec normal =
          frame
              .axes()
              .x()
              .times(sign * Math.cos(turn))
              .plus(frame.axes().z().times(Math.sin(turn)));
      if (paper.facing(normal) > -.02) {
        Vec middle = frame.point(-patch.back, -along * length, 0);
        rim.add(paper.at(middle.plus(normal.times(1.1 * patch.radius))));
        rim.add(paper.at(middle.plus(normal.times(.55 * patch.radius))));
      }
    }
    return rim;
  }

  private Geometry round(Side side, List<Part> parts) {
    Vec at = Tracked.point(skeleton, mark.part(), side);
    Geometry disc = Hulls.circle(paper.at(at), paper.mm(ROUND));
    Geometry body =
        Hulls.union(
            parts.stream().filter(part -> part.id().kind().ofBody()).map(Part::outline).toList());
    return Hulls.both(disc, body);
  }

  private static Geometry within(Geometry shape, Kind kind, Side side, List<Part> parts) {
    Part.Id limb = Part.Id.of(kind, side);
    return parts.stream()
        .filter(part -> part.id().equals(limb))
        .findFirst()
        .map(part -> Hulls.both(shape, Hulls.widened(part.outline(), -.15)))
        .map(Hulls::largest)
        .orElse(shape);
  }

  /** Close hatching; a patch of a limb has an outline too, a round would look like a ball. */
  List<Paint> painted(Geometry area, Style style, Weights weights) {
    List<Paint> paints = new ArrayList<>();
    paints.add(new Paint.Area(area, Style.PAPER));
    paints.add(Paint.Line.cut(Hatch.of(area, .9 * weights.pitch()), style.mark(), weights.near()));
    if (patch().isPresent()) {
      paints.add(Paint.Line.solid(area.getBoundary(), style.mark(), .85 * weights.near()));
    }
    return paints;
  }
}
