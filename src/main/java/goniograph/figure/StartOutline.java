package goniograph.figure;

import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;

/** The start pose as a dashed outline of the moving parts, where the body now leaves it free. */
final class StartOutline {
  /** Below this visible share the outline tells nothing and is left out. */
  static final double SEEN = .30;

  /** The trunk moves where the chest goes farther than this, in body heights. */
  private static final double TRUNK_MOVES = .04;

  private static final double CLEAR = .45;
  private static final double CRUMB = 4;

  private final Scene scene;
  private final SceneParts parts;
  private final Weights weights;

  StartOutline(Scene scene, SceneParts parts, Weights weights) {
    this.scene = scene;
    this.parts = parts;
    this.weights = weights;
  }

  /**
   * The lines of the outline, or nothing where too little of it is seen.
   *
   * @param body the parts of the body now
   */
  Geometry lines(Skeleton start, Skeleton now, List<Part> body) {
    List<Geometry> moving = new ArrayList<>();
    for (Part part : parts.body(start)) {
      if (moves(part, start, now)) {
        moving.add(part.outline());
      }
    }
    Geometry whole = Hulls.union(moving).getBoundary();
    Geometry seen = whole;
    for (Part part : body) {
      seen = new Cutter(Hulls.widened(part.outline(), CLEAR + weights.near() / 2)).outside(seen);
    }
    seen = Lines.pieces(seen, CRUMB);
    return seen.getLength() >= SEEN * whole.getLength() ? seen : Hulls.PAPER.createLineString();
  }

  /** Head, trunk and upper arms where the trunk moves; else the limbs that are told apart. */
  private boolean moves(Part part, Skeleton start, Skeleton now) {
    Kind kind = part.id().kind();
    if (trunkMoves(start, now)) {
      return kind == Kind.HEAD || kind == Kind.TRUNK || kind == Kind.UPPER_ARM;
    }
    return part.id()
        .side()
        .map(side -> limbMoves(kind, side))
        .orElse(scene.movingTrunk() && kind == Kind.HEAD);
  }

  private static boolean trunkMoves(Skeleton start, Skeleton now) {
    return start.spine(SpineJoint.T5).origin().minus(now.spine(SpineJoint.T5).origin()).length()
        > TRUNK_MOVES;
  }

  private boolean limbMoves(Kind kind, Side side) {
    return scene.movingLimbs().getOrDefault(side, Set.of()).stream()
        .map(Limb::name)
        .anyMatch(kind.name()::equals);
  }

  List<Paint> painted(Geometry lines, Style style) {
    return List.of(
        new Paint.Line(
            lines, style.line(Role.NEAR), .9 * weights.near(), false, List.of(1.5, 1.1)));
  }
}
