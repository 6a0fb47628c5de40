package goniograph.figure;

import goniograph.body.Vec;
import goniograph.pose.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** A box of a support: its hull, the faces that are seen, and the edges between them. */
final class BoxShape {
  private static final double NARROW = .7;

  private final Projection paper;
  private final Box box;

  BoxShape(Projection paper, Box box) {
    this.paper = paper;
    this.box = box;
  }

  Part part(int group, int number) {
    List<Coordinate> corners = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      corners.add(corner((i & 1) * 2 - 1, (i & 2) - 1, (i & 4) / 2 - 1));
    }
    Geometry outline = Hulls.hull(corners);
    List<Part.Region> regions = new ArrayList<>();
    regions.add(new Part.Region(Tone.SUPPORT, outline));
    List<Geometry> inner = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      face(axis, outline, regions, inner);
    }
    return new Part(
        new Part.Id(Kind.SUPPORT, Optional.empty(), number),
        Role.SUPPORT,
        outline,
        regions,
        inner,
        List.of(),
        new Solid.Block(box),
        Optional.of(group));
  }

  private void face(int axis, Geometry outline, List<Part.Region> regions, List<Geometry> inner) {
    Vec normal = axis(axis);
    double facing = paper.facing(normal);
    if (Math.abs(facing) < .02) {
      return;
    }
    Geometry face = Hulls.hull(corners(axis, facing > 0 ? 1 : -1));
    regions.add(new Part.Region(tone(normal.times(Math.signum(facing)), facing), face));
    if (wide(face)) {
      inner.add(Hulls.edgeWithin(face, outline));
    }
  }

  /** Too narrow a face would close up to a black bar. */
  private static boolean wide(Geometry face) {
    return !Hulls.widened(face, -NARROW / 2).isEmpty();
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
    return paper.at(box.centre().plus(box.axes().apply(local)));
  }
}
