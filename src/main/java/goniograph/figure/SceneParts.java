package goniograph.figure;

import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.pose.Box;
import goniograph.pose.Moment;
import goniograph.pose.Prop;
import goniograph.pose.Scene;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** All parts of a scene at one moment, unordered. */
final class SceneParts {
  /** Beyond this, the side turned away is drawn as the far side; in between never. */
  private static final double SIDE_ON = .80;

  /** The reach of the ball of the hip, in body heights. */
  private static final double HIP = .070;

  private final Projection paper;
  private final Scene scene;

  SceneParts(Projection paper, Scene scene) {
    this.paper = paper;
    this.scene = scene;
  }

  /** Body, supports and props; the moving parts told apart where {@code marked}. */
  List<Part> of(Moment moment, boolean marked) {
    List<Part> parts = new ArrayList<>(supports());
    props(moment).forEach(parts::add);
    for (Part part : body(moment.skeleton())) {
      parts.add(told(part, moment.skeleton(), marked));
    }
    return parts;
  }

  /** The parts of the body alone, all told alike. */
  List<Part> body(Skeleton skeleton) {
    List<Part> parts = new ArrayList<>();
    Part trunk = new TrunkShape(paper, skeleton).part();
    parts.add(trunk);
    parts.add(new HeadShape(paper, skeleton).part());
    for (Side side : Side.values()) {
      for (Part limb : new LimbShapes(paper, skeleton).of(side)) {
        parts.add(limb.id().kind() == Kind.THIGH ? tuckedIn(limb, trunk) : limb);
      }
      parts.add(new HandShape(paper, skeleton, side).part());
      parts.add(new FootShape(paper, skeleton, side).part());
    }
    return parts;
  }

  /** The ball of the hip must not rise over the shirt; a bent thigh farther down may. */
  private Part tuckedIn(Part thigh, Part trunk) {
    Geometry shirt =
        Hulls.union(
            trunk.regions().stream()
                .filter(region -> region.tone() == Tone.SHIRT)
                .map(Part.Region::area)
                .toList());
    Coordinate hip = thigh.welds().get(0).joint();
    Geometry cover = Hulls.both(shirt, Hulls.circle(hip, paper.mm(HIP)));
    Geometry outline = Hulls.largest(Hulls.minus(thigh.outline(), Hulls.widened(cover, .15)));
    return thigh.cutTo(outline);
  }

  /** The boxes of all supports, in their order. */
  List<Part> supports() {
    List<Part> parts = new ArrayList<>();
    for (int group = 0; group < scene.supports().size(); group++) {
      for (Box box : scene.supports().get(group).boxes()) {
        parts.add(new BoxShape(paper, box).part(group, parts.size()));
      }
    }
    return parts;
  }

  private List<Part> props(Moment moment) {
    List<Part> parts = new ArrayList<>();
    for (Prop prop : moment.props()) {
      parts.add(BandShape.part(paper, prop, parts.size()));
    }
    return parts;
  }

  private Part told(Part part, Skeleton skeleton, boolean marked) {
    boolean far = far(part, skeleton);
    Part welded = far && joinsTrunk(part) ? part.unwelded() : part;
    if (marked && moves(part)) {
      return welded.as(Role.MOVING);
    }
    return far ? welded.as(Role.FAR) : welded;
  }

  private static boolean joinsTrunk(Part part) {
    return part.id().kind() == Kind.UPPER_ARM || part.id().kind() == Kind.THIGH;
  }

  private boolean far(Part part, Skeleton skeleton) {
    double facing = paper.facing(skeleton.pelvis().axes().z());
    return part.id().side().filter(side -> side.sign() * facing < -SIDE_ON).isPresent();
  }

  private boolean moves(Part part) {
    return part.id()
        .side()
        .map(side -> limbMoves(part.id().kind(), side))
        .orElse(scene.movingTrunk() && part.id().kind() == Kind.HEAD);
  }

  private boolean limbMoves(Kind kind, Side side) {
    return scene.movingLimbs().getOrDefault(side, Set.of()).stream()
        .map(Limb::name)
        .anyMatch(kind.name()::equals);
  }
}
