package goniograph.pose;

import goniograph.body.Side;
import java.util.Locale;
import java.util.Optional;

/** Something drawn on top of the body. */
public sealed interface Mark {

  /** The mark for the other side. */
  Mark mirrored();

  /** Where an arrow goes. */
  enum Way {
    /** Along the way that the point takes; in a still pose against what the point touches. */
    ALONG,
    /** Along that way and back, with a head at both ends. */
    BOTH_WAYS,
    UP,
    DOWN,
    /** Where the chest points. */
    FORWARD,
    BACK,
    /** Away from the middle of the body. */
    OUTWARD,
    INWARD;

    /** True for a push or a short move that the arrow's word alone tells. */
    public boolean told() {
      return this != ALONG && this != BOTH_WAYS;
    }

    /** What an author adds to the point, for instance {@code both ways}; "" for the usual. */
    String word() {
      return this == ALONG ? "" : " " + name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * The way a point of the body takes from one key frame to the next, or where it pushes.
   *
   * @param part the point's word, for instance {@code heel}
   */
  record Arrow(String part, Optional<Side> side, Way way) implements Mark {
    @Override
    public Arrow mirrored() {
      return new Arrow(part, side.map(Side::other), way);
    }
  }

  /** The size of a joint's angle, drawn in its true plane. */
  record Angle(String joint, Optional<Side> side) implements Mark {
    @Override
    public Angle mirrored() {
      return new Angle(joint, side.map(Side::other));
    }
  }

  /** A face of a limb. */
  enum Face {
    /** Where it points in upright stance: the chest, the kneecap, the palm turned forward. */
    FRONT,
    BACK;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Where the reader shall feel it, hatched.
   *
   * @param face the face of a limb where the author named one
   */
  record Target(String part, Optional<Side> side, Optional<Face> face) implements Mark {
    @Override
    public Target mirrored() {
      return new Target(part, side.map(Side::other), face);
    }
  }

  /** A dashed line between two points that line up, for instance hand and nose. */
  record Landmark(String from, Optional<Side> fromSide, String to, Optional<Side> toSide)
      implements Mark {
    @Override
    public Landmark mirrored() {
      return new Landmark(from, fromSide.map(Side::other), to, toSide.map(Side::other));
    }
  }

  /** A dashed outline of the moving parts in the start pose. */
  record Ghost() implements Mark {
    @Override
    public Ghost mirrored() {
      return this;
    }
  }

  /** The centre of mass above the base of support. */
  record Balance() implements Mark {
    @Override
    public Balance mirrored() {
      return this;
    }
  }

  /** A plumb line through the shoulder, with rings at shoulder and ear. */
  record Plumb() implements Mark {
    @Override
    public Plumb mirrored() {
      return this;
    }
  }
}
