package goniograph.pose;

import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;

/**
 * A level slab beside or ahead of a person.
 *
 * @param near the middle of its near edge, at the height of the floor
 * @param away from the person, along an axis of the world
 * @param width along its near edge
 * @param depth away from the person
 * @param top height of its upper face
 * @param thickness down from there
 */
record Slab(Vec near, Vec away, double width, double depth, double top, double thickness) {

  double bottom() {
    return top - thickness;
  }

  Box box() {
    return box(-width / 2, width / 2, 0, depth, bottom(), top);
  }

  /** Its upper face. */
  Surface surface() {
    return surface(depth, top, top, Vec.UP);
  }

  /** Its face towards the person. */
  Surface face() {
    return surface(0, bottom(), top, away.times(-1));
  }

  /** Four legs from the floor, standing back a little from its corners. */
  List<Box> legs(double thick) {
    List<Box> legs = new ArrayList<>();
    for (double along : List.of(-width / 2 + thick, width / 2 - 2 * thick)) {
      for (double in : List.of(thick, depth - 2 * thick)) {
        legs.add(box(along, along + thick, in, in + thick, 0, bottom()));
      }
    }
    return legs;
  }

  private Vec along() {
    return new Vec(Math.abs(away.z()), 0, Math.abs(away.x()));
  }

  private Vec at(double along, double in, double y) {
    return near.plus(along().times(along)).plus(away.times(in)).plus(Vec.UP.times(y));
  }

  private Box box(double along1, double along2, double in1, double in2, double y1, double y2) {
    Vec a = at(along1, in1, y1);
    Vec b = at(along2, in2, y2);
    return Furniture.box(a.x(), b.x(), a.y(), b.y(), a.z(), b.z());
  }

  private Surface surface(double deep, double y1, double y2, Vec normal) {
    Vec a = at(-width / 2, 0, y1);
    Vec b = at(width / 2, deep, y2);
    Vec low = new Vec(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z()));
    Vec high = new Vec(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z()));
    return new Surface(low, high, normal);
  }
}
