package goniograph.figure;

import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * The order in which parts are painted, farthest first: a graph of pairs that overlap on paper,
 * sorted so that the nearer of two comes later.
 */
@SuppressWarnings("ReferenceEquality") // two parts may look alike; a part is only itself
final class DepthOrder {
  /** Overlaps below this area, in mm2, bind nothing. */
  private static final double TOUCH = .02;

  private static final double CARRIED = 1;

  private final Projection paper;
  private final Skeleton skeleton;
  private final boolean[] carries;

  /**
   * @param carries for each support part, by its number, whether the body rests on it
   */
  DepthOrder(Projection paper, Skeleton skeleton, boolean[] carries) {
    this.paper = paper;
    this.skeleton = skeleton;
    this.carries = carries;
  }

  /** The parts, farthest first. */
  List<Part> sorted(List<Part> parts) {
    List<Part> left = new ArrayList<>(parts);
    left.sort(Comparator.comparingDouble(part -> part.solid().depth(paper)));
    List<Pair> pairs = pairs(left);
    List<Part> done = new ArrayList<>();
    while (!left.isEmpty()) {
      Part next = free(left, pairs);
      done.add(next);
      left.remove(next);
      pairs.removeIf(pair -> pair.under == next || pair.over == next);
    }
    return done;
  }

  /** The farthest part under which nothing is left; a ring of pairs loses its weakest. */
  private static Part free(List<Part> left, List<Pair> pairs) {
    while (true) {
      for (Part part : left) {
        if (pairs.stream().noneMatch(pair -> pair.over == part)) {
          return part;
        }
      }
      pairs.stream()
          .filter(pair -> leads(pair.over, pair.under, pairs, new ArrayList<>()))
          .min(Comparator.comparingDouble(Pair::difference))
          .ifPresent(pairs::remove);
    }
  }

  private static boolean leads(Part from, Part to, List<Pair> pairs, List<Part> seen) {
    if (from == to) {
      return true;
    }
    if (seen.contains(from)) {
      return false;
    }
    seen.add(from);
    return pairs.stream().anyMatch(pair -> pair.under == from && leads(pair.over, to, pairs, seen));
  }

  private record Pair(Part under, Part over, double difference) {}

  private List<Pair> pairs(List<Part> parts) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      for (int j = i + 1; j < parts.size(); j++) {
        addPair(pairs, parts.get(i), parts.get(j));
      }
    }
    return pairs;
  }

  private void addPair(List<Pair> pairs, Part a, Part b) {
    if (!a.outline().getEnvelopeInternal().intersects(b.outline().getEnvelopeInternal())) {
      return;
    }
    Geometry overlap = Hulls.both(a.outline(), b.outline());
    if (overlap.getArea() > TOUCH) {
      double nearer = nearer(a, b, overlap);
      pairs.add(nearer >= 0 ? new Pair(b, a, nearer) : new Pair(a, b, -nearer));
    }
  }

  /** How much nearer the first part is where the two overlap, in body heights. */
  private double nearer(Part a, Part b, Geometry overlap) {
    if (a.id().hangsOn(b.id())) {
      return hanging(a);
    }
    if (b.id().hangsOn(a.id())) {
      return -hanging(b);
    }
    if (gripped(a, b)) {
      return -CARRIED;
    }
    if (gripped(b, a)) {
      return CARRIED;
    }
    var c = overlap.getCentroid().getCoordinate();
    return a.solid().depthAt(c, paper) + bias(a, b) - b.solid().depthAt(c, paper) - bias(b, a);
  }

  /** A bar or strand is under the fist that closes round it. */
  private static boolean gripped(Part thing, Part hand) {
    return thing.id().kind() == Kind.PROP
        && thing.solid() instanceof Solid.Bones
        && hand.id().kind() == Kind.HAND;
  }

  /** A support that carries the body lies behind it. */
  private double bias(Part part, Part other) {
    boolean behind =
        part.id().kind() == Kind.SUPPORT
            && other.id().kind().ofBody()
            && carries[part.id().number()]
            && !armRest(part);
    return behind ? -CARRIED : 0;
  }

  /** True for what stands up beside who sits: it may be nearer than the body. */
  private boolean armRest(Part part) {
    Vec hips = skeleton.pelvis().origin();
    return part.solid() instanceof Solid.Block block
        && Math.abs(block.box().centre().z() - hips.z()) > .11
        && block.box().centre().y() - block.box().half().y() > .5 * hips.y();
  }

  /** How much nearer a limb is than what it hangs on. */
  private double hanging(Part child) {
    Solid.Bones bones = (Solid.Bones) child.solid();
    double away = paper.depth(bones.distal()) - paper.depth(bones.proximal());
    return switch (child.id().kind()) {
      case HEAD -> CARRIED;
      case FOOT -> away - .003;
      case UPPER_ARM -> limb(child, skeleton.spine(SpineJoint.T5).axes().z(), bones, away);
      case THIGH -> limb(child, skeleton.pelvis().axes().z(), bones, away);
      default -> away;
    };
  }

  private double limb(Part child, Vec right, Solid.Bones bones, double away) {
    double length = bones.distal().minus(bones.proximal()).length();
    double side = child.id().side().map(s -> s.sign() * paper.facing(right)).orElse(0.0);
    return Math.abs(side) < .3 ? away + .10 * length : .5 * length * side + away;
  }
}
