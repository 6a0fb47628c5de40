package goniograph.figure;

import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.pose.Box;
import goniograph.pose.Moment;
import goniograph.pose.Prop;
import goniograph.pose.Scene;
import goniograph.pose.Shape;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/** All parts of a scene at one moment, unordered. */
final class SceneParts {
  /** Beyond this, the side turned away is drawn as the far side; in between never. */
  private static final double SIDE_ON = .80;

  private final Projection paper;
  private final Scene scene;
  private final Bodies bodies;

  SceneParts(Projection paper, Scene scene) {
    this(paper, scene, new Bodies(Person.ADULT));
  }

  /**
   * @param bodies bodies already shaped for this view
   */
  SceneParts(Projection paper, Scene scene, Bodies bodies) {
    this.paper = paper;
    this.scene = scene;
    this.bodies = bodies;
  }

  /** Body, supports and props; the moving parts told apart where {@code marked}. */
  List<Part> of(Moment moment, boolean marked) {
    List<Part> parts = new ArrayList<>(supports());
    parts.addAll(wheels());
    props(moment).forEach(parts::add);
    for (Part part : body(moment.skeleton())) {
      parts.add(told(part, moment.skeleton(), marked));
    }
    return parts;
  }

  /** The parts of the body alone, all told alike. */
  List<Part> body(Skeleton skeleton) {
    return bodies.of(skeleton, paper);
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

  private List<Part> wheels() {
    List<Part> parts = new ArrayList<>();
    for (int group = 0; group < scene.supports().size(); group++) {
      if (scene.supports().get(group).kind().equals(Wheelchair.KIND)) {
        for (Wheelchair.Wheel wheel : Wheelchair.wheels(scene.supports().get(group))) {
          parts.add(new WheelShape(paper, wheel).part(group, parts.size()));
        }
      }
    }
    return parts;
  }

  private List<Part> props(Moment moment) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < moment.props().size(); i++) {
      Prop prop = moment.props().get(i);
      int group = scene.supports().size() + i;
      for (Shape shape : prop.shapes()) {
        new PropShape(paper, parts.size(), group, prop.elastic()).part(shape).ifPresent(parts::add);
      }
    }
    return parts;
  }

  private Part told(Part part, Skeleton skeleton, boolean marked) {
    boolean far = far(part, skeleton);
    Part welded = far && joinsTrunk(part) ? part.unwelded() : part;
    if (marked && !everythingMoves() && moves(part)) {
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

  /** Where the whole body moves, marking all of it would tell nothing apart. */
  private boolean everythingMoves() {
    return Arrays.stream(Side.values())
        .allMatch(
            side ->
                scene.movingLimbs().getOrDefault(side, Set.of()).size() == Limb.values().length);
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
