package goniograph.pose;

import goniograph.body.Freedom;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import goniograph.source.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How a segment shall lie in the world, typed in place of a joint's angle.
 *
 * @param side its side; empty for trunk and head
 * @param at the place of the words
 */
public record SegmentWish(Segment segment, Optional<Side> side, Aim aim, Span at) {

  /** As an author writes it, for instance {@code thigh left: level}. */
  public String words() {
    String which = side.map(s -> " " + s.name().toLowerCase(Locale.ROOT)).orElse("");
    return segment.word() + which + ": " + aim.words();
  }

  /** The movement that the wish works out. */
  Freedom own() {
    return segment.own(side);
  }

  /** True where both lay the same segment. */
  boolean sameSegment(SegmentWish other) {
    return segment == other.segment && side.equals(other.side);
  }

  /** Left and right swapped. */
  SegmentWish mirrored() {
    return new SegmentWish(segment, side.map(Side::other), aim.mirrored(), at);
  }

  /** Where the segment points now, as far as this wish asks. */
  Vec direction(Skeleton s) {
    return segment.direction(s, side, aim instanceof Aim.Pointing || aim instanceof Aim.PointingAt);
  }

  /**
   * The direction that fulfils the wish and is nearest to {@code now}.
   *
   * @param s the body the segment belongs to
   * @param supports what may be pointed at
   */
  Vec wanted(Skeleton s, List<Support> supports, Vec now) {
    if (aim instanceof Aim.Pointing pointing) {
      return pointing.direction().way();
    }
    if (aim instanceof Aim.PointingAt at) {
      return towards(s, supports, at.thing()).orElse(now);
    }
    return aim instanceof Aim.Level && segment != Segment.HEAD ? level(now) : upright(now);
  }

  /** How far the segment is from its wish, in degrees. */
  public double offDegrees(Skeleton s, List<Support> supports) {
    Vec now = direction(s);
    double cosine = Math.max(-1, Math.min(1, now.dot(wanted(s, supports, now))));
    return Math.toDegrees(Math.acos(cosine));
  }

  /** A limb that hangs straight down has no nearest horizontal: it goes forward. */
  private static Vec level(Vec now) {
    Vec flat = new Vec(now.x(), 0, now.z());
    return flat.length() < .02 ? new Vec(1, 0, 0) : flat.unit();
  }

  private Vec upright(Vec now) {
    boolean down =
        switch (segment) {
          case TRUNK, HEAD -> false;
          case THIGH, SHANK -> true;
          case UPPER_ARM -> now.y() < 0;
          case FOREARM, FOOT -> now.y() < -.35;
        };
    return new Vec(0, down ? -1 : 1, 0);
  }

  private Optional<Vec> towards(Skeleton s, List<Support> supports, String thing) {
    Vec from = segment.origin(s, side);
    return supports.stream()
        .filter(support -> support.kind().equals(thing))
        .flatMap(support -> support.boxes().stream())
        .map(box -> nearest(box, from).minus(from))
        .filter(way -> way.length() > 1e-6)
        .min((a, b) -> Double.compare(a.length(), b.length()))
        .map(Vec::unit);
  }

  private static Vec nearest(Box box, Vec from) {
    Vec in = box.axes().invert(from.minus(box.centre()));
    Vec half = box.half();
    Vec kept =
        new Vec(within(in.x(), half.x()), within(in.y(), half.y()), within(in.z(), half.z()));
    return box.centre().plus(box.axes().apply(kept));
  }

  private static double within(double value, double half) {
    return Math.max(-half, Math.min(half, value));
  }
}
