package goniograph.pose;

import goniograph.body.Body;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Common furniture as boxes; measures in cm are those of usual household pieces. */
final class Furniture {
  private static final double FAR = 20;
  private final Body body;

  Furniture(Body body) {
    this.body = body;
  }

  /**
   * A chair without arms.
   *
   * @param back the middle of the back rest's front face, at the height of the floor
   * @param depth of the seat, in body heights
   */
  Placed chair(Vec back, double depth, double heightCm) {
    double seat = f(heightCm);
    double half = f(22);
    double x = back.x();
    double z = back.z();
    List<Box> boxes = new ArrayList<>();
    boxes.add(box(x, x + depth, seat - f(3.5), seat, z - half, z + half));
    for (double side : List.of(-1.0, 1.0)) {
      double outer = z + side * half;
      double inner = outer - side * f(3.5);
      boxes.add(box(x + depth - f(3.5), x + depth, 0, seat - f(3.5), inner, outer));
      boxes.add(box(x - f(3), x + f(.5), 0, seat - f(3.5), inner, outer));
      boxes.add(box(x - f(3), x, seat - f(3.5), seat + f(18), inner, outer));
    }
    boxes.add(box(x - f(3), x, seat + f(18), seat + f(42), z - half, z + half));
    Surface level =
        new Surface(new Vec(x, seat, z - half), new Vec(x + depth, seat, z + half), Vec.UP);
    Surface rest =
        new Surface(
            new Vec(x, seat + f(18), z - half),
            new Vec(x, seat + f(42), z + half),
            new Vec(1, 0, 0));
    return new Placed(
        SupportKind.CHAIR, boxes, Optional.of(level), Optional.of(rest), new Vec(x, seat, z));
  }

  /** A worktop with cupboards below; the cupboards stand back from its near edge. */
  Placed counter(Vec near, Vec away, double heightCm) {
    Slab top = new Slab(near, away, f(90), f(60), f(heightCm), f(4));
    Slab body =
        new Slab(near.plus(away.times(f(3))), away, f(86), f(57), top.bottom(), top.bottom());
    return new Placed(
        SupportKind.COUNTER,
        List.of(top.box(), body.box()),
        Optional.of(top.surface()),
        Optional.empty(),
        near.plus(Vec.UP.times(f(heightCm))));
  }

  /** A table on four legs. */
  Placed table(Vec near, Vec away, double heightCm) {
    Slab top = new Slab(near, away, f(120), f(70), f(heightCm), f(3));
    List<Box> boxes = new ArrayList<>(List.of(top.box()));
    boxes.addAll(top.legs(f(5)));
    return new Placed(
        SupportKind.TABLE,
        boxes,
        Optional.of(top.surface()),
        Optional.empty(),
        near.plus(Vec.UP.times(f(heightCm))));
  }

  /** A piece of wall, its face at {@code near}. */
  Placed wall(Vec near, Vec away, double heightCm) {
    Slab slab = new Slab(near, away, f(120), f(8), f(heightCm), f(heightCm));
    return new Placed(
        SupportKind.WALL, List.of(slab.box()), Optional.empty(), Optional.of(slab.face()), near);
  }

  /** A mat or bed below a body that reaches from x to x. */
  Placed under(SupportKind kind, double from, double to, double z, double heightCm) {
    boolean bed = kind == SupportKind.BED;
    Vec near = new Vec((from + to) / 2, 0, z - f(bed ? 45 : 35));
    double length = Math.max(to - from, f(bed ? 200 : 180));
    double thick = bed ? f(Math.min(25, heightCm)) : f(heightCm);
    Slab top = new Slab(near, new Vec(0, 0, 1), length, f(bed ? 90 : 70), f(heightCm), thick);
    List<Box> boxes = new ArrayList<>(List.of(top.box()));
    if (bed && top.bottom() > 0) {
      boxes.addAll(top.legs(f(6)));
    }
    return new Placed(kind, boxes, Optional.of(top.surface()), Optional.empty(), near);
  }

  /** The floor, which has no boxes. */
  static Placed floor() {
    Surface level = new Surface(new Vec(-FAR, 0, -FAR), new Vec(FAR, 0, FAR), Vec.UP);
    return new Placed(SupportKind.FLOOR, List.of(), Optional.of(level), Optional.empty(), Vec.ZERO);
  }

  private double f(double cm) {
    return body.fraction(cm);
  }

  static Box box(double x1, double x2, double y1, double y2, double z1, double z2) {
    Vec centre = new Vec((x1 + x2) / 2, (y1 + y2) / 2, (z1 + z2) / 2);
    Vec half = new Vec(Math.abs(x2 - x1) / 2, Math.abs(y2 - y1) / 2, Math.abs(z2 - z1) / 2);
    return new Box(centre, Turn.NONE, half);
  }
}
