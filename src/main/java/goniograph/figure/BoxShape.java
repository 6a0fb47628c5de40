package goniograph.figure;

import goniograph.body.Vec;
import goniograph.pose.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** A box: its hull, the faces that are seen, and the edges between them; or a soft one. */
final class BoxShape {
  private static final double NARROW = .62;

  private final Projection paper;
  private final Box box;

  BoxShape(Projection paper, Box box) {
    this.paper = paper;
    this.box = box;
  }

  /** As a part of a support. */
  Part part(int group, int number) {
    return part(
        new Part.Id(Kind.SUPPORT, Optional.empty(), number), Role.SUPPORT, Optional.of(group));
  }

  /** As a held thing. */
  Part prop(int group, int number) {
    return part(new Part.Id(Kind.PROP, Optional.empty(), number), Role.PROP, Optional.of(group));
  }

  private Part part(Part.Id id, Role role, Optional<Integer> group) {
    List<Part.Region> regions = new ArrayList<>();
    List<Geometry> inner = new ArrayList<>();
    Geometry outline = box.round() > 0 ? soft(inner) : sharp();
    regions.add(new Part.Region(Tone.SUPPORT, outline));
    if (box.round() == 0) {
      for (int axis = 0; axis < 3; axis++) {
        face(axis, outline, regions, inner);
      }
    }
    return new Part(id, role, outline, regions, inner, List.of(), new Solid.Block(box), group);
  }

  private Geometry sharp() {
    List<Coordinate> corners = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      corners.add(corner((i & 1) * 2 - 1, (i & 2) - 1, (i & 4) / 2 - 1));
    }
    return Hulls.hull(corners);
  }

  /** Eight balls for corners, and the near half of the seam round the middle. */
  private Geometry soft(List<Geometry> inner) {
    Vec h = box.half();
    double r = box.round();
    List<Coordinate> rims = new ArrayList<>();
    List<Coordinate> seam = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double x = ((i & 1) * 2 - 1) * (h.x() - r);
      double z = ((i & 4) / 2 - 1) * (h.z() - r);
      Vec corner = new Vec(x, ((i & 2) - 1) * (h.y() - r), z);
      rims.addAll(Hulls.ball(paper, inWorld(corner), r));
      Vec middle = inWorld(new Vec(x, 0, z));
      seam.addAll(Hulls.disc(paper, middle, axis(0).times(r), axis(2).times(r)));
    }
    Geometry outline = Hulls.hull(rims);
    inner.add(Hulls.both(lowerEdge(seam), Hulls.widened(outline, -.1)));
    return outline;
  }

  /** The side of a level rim that is seen: the lower one on paper where its top is seen. */
  private Geometry lowerEdge(List<Coordinate> rim) {
    Geometry edge = Hulls.hull(rim).getBoundary();
    Coordinate shift = paper.at(axis(1).times(paper.facing(axis(1)) > 0 ? -1 : 1));
    double length = Math.hypot(shift.x, shift.y);
    if (length < 1e-9) {
      return edge;
    }
    double k = .2 / length;
    Geometry beside =
        AffineTransformation.translationInstance(-k * shift.x, -k * shift.y)
            .transform(Hulls.hull(rim));
    return Hulls.minus(edge, beside);
  }

  private Vec inWorld(Vec local) {
    return box.centre().plus(box.axes().apply(local));
  }

  private void face(int axis, Geometry outline, List<Part.Region> regions, List<Geometry> inner) {
    Vec normal = axis(axis);
    double facing = paper.facing(normal);
    if (Math.abs(facing) < .02) {
      return;
    }
    Geometry face = Hulls.hull(corners(axis, facing > 0 ? 1 : -1));
    regions.add(new Part.Region(tone(normal.times(Math.signum(facing)), facing), face));
    edges(face).filter(edge -> apart(edge, outline)).forEach(inner::add);
  }

  private static Stream<Geometry> edges(Geometry face) {
    Coordinate[] corners = face.getCoordinates();
    return IntStream.range(1, corners.length).mapToObj(i -> Hulls.line(corners[i - 1], corners[i]));
  }

  /** Two lines nearer than this, mm, would close up to a black bar. */
  private static boolean apart(Geometry edge, Geometry outline) {
    return edge.getCentroid().distance(outline.getBoundary()) > NARROW;
  }

  private static Tone tone(Vec normal, double facing) {
    if (normal.y() > .7) {
      return Tone.SUPPORT_TOP;
    }
    return Math.abs(facing) < .5 ? Tone.SUPPORT_SIDE : Tone.SUPPORT;
  }

  private Vec axis(int axis) {
    return switch (axis) {
      case 0 -> box.axes().x();
      case 1 -> box.axes().y();
      default -> box.axes().z();
    };
  }

  private List<Coordinate> corners(int axis, int sign) {
    List<Coordinate> corners = new ArrayList<>();
    for (int a = -1; a <= 1; a += 2) {
      for (int b = -1; b <= 1; b += 2) {
        corners.add(
            switch (axis) {
              case 0 -> corner(sign, a, b);
              case 1 -> corner(a, sign, b);
              default -> corner(a, b, sign);
            });
      }
    }
    return corners;
  }

  private Coordinate corner(int x, int y, int z) {
    Vec half = box.half();
    Vec local = new Vec(x * half.x(), y * half.y(), z * half.z());
    return paper.at(inWorld(local));
  }
}
