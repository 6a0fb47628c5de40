package goniograph.pose;

import goniograph.body.Body;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * The axes by which a piece of furniture is built: from a point of the floor, {@code in} along
 * {@code ahead}, {@code up}, and {@code across}. All arguments in cm.
 *
 * @param body whose height turns cm into the scene's lengths
 * @param origin the point of the floor, in body heights
 * @param ahead along an axis of the world, of length 1
 */
record Stand(Body body, Vec origin, Vec ahead) {

  /** A box from corner to corner. */
  Box box(double in1, double in2, double up1, double up2, double across1, double across2) {
    Vec a = at(in1, up1, across1);
    Vec b = at(in2, up2, across2);
    Vec low = low(a, b);
    Vec high = high(a, b);
    return new Box(low.towards(high, .5), Turn.NONE, high.minus(low).times(.5));
  }

  /** A level face that looks up. */
  Surface level(double in1, double in2, double up, double across1, double across2) {
    return surface(at(in1, up, across1), at(in2, up, across2), Vec.UP);
  }

  /** An upright face that looks back to the origin. */
  Surface facing(double in, double up1, double up2, double across1, double across2) {
    return surface(at(in, up1, across1), at(in, up2, across2), ahead.times(-1));
  }

  /** An upright face that looks ahead. */
  Surface looking(double in, double up1, double up2, double across1, double across2) {
    return surface(at(in, up1, across1), at(in, up2, across2), ahead);
  }

  /** Four legs from the floor, standing in from the corners. */
  List<Box> legs(double in1, double in2, double up, double half, double thick) {
    List<Box> legs = new ArrayList<>();
    for (double in : List.of(in1, in2 - thick)) {
      for (double across : List.of(-half, half - thick)) {
        legs.add(box(in, in + thick, 0, up, across, across + thick));
      }
    }
    return legs;
  }

  private Vec at(double in, double up, double across) {
    Vec sideways = new Vec(Math.abs(ahead.z()), 0, Math.abs(ahead.x()));
    return origin
        .plus(ahead.times(body.fraction(in)))
        .plus(Vec.UP.times(body.fraction(up)))
        .plus(sideways.times(body.fraction(across)));
  }

  private static Surface surface(Vec a, Vec b, Vec normal) {
    return new Surface(low(a, b), high(a, b), normal);
  }

  private static Vec low(Vec a, Vec b) {
    return new Vec(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z()));
  }

  private static Vec high(Vec a, Vec b) {
    return new Vec(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z()));
  }
}
