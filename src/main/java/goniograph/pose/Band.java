package goniograph.pose;

import goniograph.body.Frame;
import goniograph.body.Landmarks;
import goniograph.body.Lengths;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The course of an elastic band at one moment, from end to end. */
final class Band {
  /** The knob of a door anchor. */
  private static final double KNOB = .016;

  private static final double TAIL = .036;

  private final BandWish wish;
  private final Holding holding;
  private final Skeleton now;

  Band(BandWish wish, Holding holding) {
    this.wish = wish;
    this.holding = holding;
    this.now = holding.now();
  }

  /**
   * A place that the band passes: on a limb, or fast where it has none.
   *
   * @param ring the band round the limb there
   */
  private record Node(Vec at, Optional<Limb> limb, Side side, Optional<Shape.Ring> ring) {}

  Prop prop() {
    return wish.round().filter(BandWish.Round::loop).map(this::loop).orElseGet(this::open);
  }

  private Prop open() {
    List<Node> course = course();
    List<Shape> shapes = new ArrayList<>();
    List<Pull> pulls = new ArrayList<>();
    double length = 0;
    for (int i = 0; i < course.size(); i++) {
      Node node = course.get(i);
      if (i > 0) {
        length += node.at.minus(course.get(i - 1).at).length();
        shapes.add(strand(course.get(i - 1), node));
      }
      end(node).forEach(shapes::add);
      pull(course, i).ifPresent(pulls::add);
    }
    return new Prop(wish.word(), shapes, pulls, Optional.of(length), Optional.empty());
  }

  private static Shape strand(Node from, Node to) {
    return new Shape.Strip(List.of(clear(from, to), clear(to, from)));
  }

  /** A strand ends at the rim of the knob. */
  private static Vec clear(Node node, Node other) {
    return node.limb.isPresent()
        ? node.at
        : node.at.plus(other.at.minus(node.at).unit().times(.8 * KNOB));
  }

  private List<Shape> end(Node node) {
    List<Shape> shapes = new ArrayList<>();
    node.ring.ifPresent(shapes::add);
    if (node.limb.isEmpty()) {
      shapes.add(new Shape.Ball(node.at, KNOB));
    }
    if (node.limb.filter(limb -> limb == Limb.HAND).isPresent()) {
      shapes.add(tail(node));
    }
    return shapes;
  }

  /** The free end hangs from the fist's little-finger side. */
  private Shape tail(Node hand) {
    Vec out = now.limb(Limb.HAND, hand.side).axes().x().times(-1);
    Vec root = hand.at.plus(out.times(.026));
    Vec bend = root.plus(out.times(.3 * TAIL)).plus(Vec.UP.times(-.3 * TAIL));
    return new Shape.Strip(List.of(root, bend, bend.plus(Vec.UP.times(-.6 * TAIL))));
  }

  /** The tension draws a limb towards the next places of the course. */
  private static Optional<Pull> pull(List<Node> course, int i) {
    Node node = course.get(i);
    Vec share = Vec.ZERO;
    for (int j : List.of(i - 1, i + 1)) {
      if (j >= 0 && j < course.size()) {
        share = share.plus(course.get(j).at.minus(node.at).unit());
      }
    }
    Vec all = share;
    return node.limb.map(limb -> new Pull(limb, node.side, node.at, all));
  }

  private List<Node> course() {
    List<Side> hands = holding.hands();
    List<Node> middle = middle();
    if (wish.round().isPresent() && wish.from() != BandWish.From.HANDS) {
      return List.of(middle.get(0), round(wish.round().get()));
    }
    List<Node> course = new ArrayList<>();
    course.add(hand(hands.get(0)));
    course.addAll(hands.size() == 2 ? middle : middle.subList(0, Math.min(1, middle.size())));
    if (hands.size() == 2) {
      course.add(hand(hands.get(1)));
    }
    return course;
  }

  /** What the band passes between the hands. */
  private List<Node> middle() {
    return switch (wish.from()) {
      case HANDS -> wish.round().map(this::round).stream().toList();
      case FEET -> holding.hands().stream().map(side -> foot(now, side)).toList();
      case DOOR, SUPPORT ->
          List.of(new Node(anchor(), Optional.empty(), Side.RIGHT, Optional.empty()));
    };
  }

  private Node hand(Side side) {
    Frame hand = now.limb(Limb.HAND, side);
    Vec palm = Landmarks.palm(now, side);
    Shape.Ring ring =
        new Shape.Ring(palm, hand.axes().x().times(.029), hand.axes().z().times(.018));
    return new Node(palm, Optional.of(Limb.HAND), side, Optional.of(ring));
  }

  private static Node foot(Skeleton s, Side side) {
    Frame foot = s.limb(Limb.FOOT, side);
    Vec middle = foot.point(.058, -.024, 0);
    Shape.Ring ring =
        new Shape.Ring(middle, foot.axes().y().times(.020), foot.axes().z().times(.030));
    return new Node(middle, Optional.of(Limb.FOOT), side, Optional.of(ring));
  }

  private static Node leg(Skeleton s, Side side, Limb limb, double part, double radius) {
    Frame bone = s.limb(limb, side);
    Vec middle = bone.point(0, -part * Lengths.of(limb), 0);
    Shape.Ring ring =
        new Shape.Ring(middle, bone.axes().x().times(radius), bone.axes().z().times(radius));
    return new Node(middle, Optional.of(limb), side, Optional.of(ring));
  }

  private Node round(BandWish.Round round) {
    return round(now, round, round.side());
  }

  private static Node round(Skeleton s, BandWish.Round round, Side side) {
    return switch (round) {
      case FOOT, RIGHT_FOOT, LEFT_FOOT -> foot(s, side);
      case RIGHT_ANKLE, LEFT_ANKLE, BOTH_ANKLES -> leg(s, side, Limb.SHANK, .86, .030);
      case BOTH_THIGHS -> leg(s, side, Limb.THIGH, .80, .047);
    };
  }

  /** Once round both legs: a strand before them and one behind. */
  private Prop loop(BandWish.Round round) {
    Node left = round(now, round, Side.LEFT);
    Node right = round(now, round, Side.RIGHT);
    Shape.Ring a = left.ring.orElseThrow();
    Shape.Ring b = right.ring.orElseThrow();
    List<Shape> shapes = new ArrayList<>(List.of(a, b));
    for (int face : List.of(-1, 1)) {
      Vec from = a.centre().plus(a.a().times(face)).plus(a.b().times(.5));
      Vec to = b.centre().plus(b.a().times(face)).minus(b.b().times(.5));
      shapes.add(new Shape.Strip(List.of(from, to)));
    }
    Vec way = right.at.minus(left.at);
    Limb limb = left.limb.orElseThrow();
    List<Pull> pulls =
        List.of(
            new Pull(limb, Side.LEFT, left.at, way.unit().times(2)),
            new Pull(limb, Side.RIGHT, right.at, way.unit().times(-2)));
    double length = 2 * way.length() + 2 * Math.PI * a.b().length();
    return new Prop(wish.word(), shapes, pulls, Optional.of(length), Optional.empty());
  }

  /** Where the band is fast; it does not move with the body. */
  private Vec anchor() {
    Skeleton s = holding.start();
    Vec end = end(s);
    double y =
        wish.heightCm()
            .map(holding::f)
            .orElseGet(
                () -> wish.round().isPresent() ? end.y() : s.spine(SpineJoint.T8).origin().y());
    Vec at = wish.from() == BandWish.From.SUPPORT ? support(end) : ahead(s, end);
    return new Vec(at.x(), y, at.z());
  }

  private Vec ahead(Skeleton s, Vec end) {
    Vec forward = Vec.UP.cross(s.pelvis().axes().z()).unit();
    return end.plus(forward.times(holding.f(wish.distanceCm())));
  }

  /** On the near edge of what stands ahead or beside, level with what the band runs to. */
  private Vec support(Vec end) {
    return holding.room().all().stream()
        .filter(p -> !p.kind().under() && p.kind() != SupportKind.FLOOR)
        .min(Comparator.comparing(p -> p.where() == Where.BEHIND))
        .map(
            p ->
                p.where().side().isPresent()
                    ? new Vec(end.x(), 0, p.near().z())
                    : new Vec(p.near().x(), 0, end.z()))
        .orElse(end);
  }

  /** What the band runs to in the first key frame: the middle of the hands, or the limb. */
  private Vec end(Skeleton s) {
    if (wish.round().isPresent()) {
      return round(s, wish.round().get(), wish.round().get().side()).at;
    }
    return holding.hands().stream()
        .map(side -> Landmarks.palm(s, side))
        .reduce(Vec::plus)
        .map(sum -> sum.times(1.0 / holding.hands().size()))
        .orElse(Vec.ZERO);
  }

  /** The closed door that holds the band's anchor, with its handle. */
  Support door() {
    Vec at = anchor();
    Stand stand = new Stand(holding.body(), new Vec(at.x(), 0, at.z()), Where.AHEAD.away());
    List<Box> boxes = List.of(stand.box(0, 4, 0, 200, -36, 36), stand.box(-5, 0, 100, 103, 20, 31));
    return new Support("door", boxes, false);
  }
}
