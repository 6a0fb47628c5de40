package goniograph.body;

import java.util.EnumMap;
import java.util.Map;

/**
 * A body in one pose: the frame of every segment in the world.
 *
 * @param body the lengths and build
 * @param pelvis origin in the middle between the hip centres
 * @param spine each joint's frame, origin at the joint
 * @param left the left limbs' frames, origin at the proximal joint centre
 * @param right the right limbs' frames
 * @param fingers how each hand's fingers are bent
 */
public record Skeleton(
    Body body,
    Frame pelvis,
    Map<SpineJoint, Frame> spine,
    Map<Limb, Frame> left,
    Map<Limb, Frame> right,
    Map<Side, Fingers> fingers) {
  public Skeleton {
    spine = Map.copyOf(spine);
    left = Map.copyOf(left);
    right = Map.copyOf(right);
    fingers = Map.copyOf(fingers);
  }

  /** The frame of a limb segment. */
  public Frame limb(Limb limb, Side side) {
    Frame frame = (side == Side.LEFT ? left : right).get(limb);
    if (frame == null) {
      throw new IllegalArgumentException(side + " " + limb);
    }
    return frame;
  }

  /** The frame above a spine joint; that of C0 carries the head. */
  public Frame spine(SpineJoint joint) {
    Frame frame = spine.get(joint);
    if (frame == null) {
      throw new IllegalArgumentException(joint.toString());
    }
    return frame;
  }

  /** The whole skeleton carried along by {@code way}, without turning. */
  public Skeleton moved(Vec way) {
    return new Skeleton(
        body, moved(pelvis, way), moved(spine, way), moved(left, way), moved(right, way), fingers);
  }

  /** The whole skeleton turned about a point and then carried along, as one rigid thing. */
  public Skeleton turned(Turn turn, Vec about, Vec way) {
    Frame to = new Frame(about.plus(way).minus(turn.apply(about)), turn);
    return new Skeleton(
        body, turned(pelvis, to), turned(spine, to), turned(left, to), turned(right, to), fingers);
  }

  /** The skeleton with some joints of the spine placed anew; what hangs on them stays. */
  public Skeleton with(Map<SpineJoint, Frame> joints) {
    Map<SpineJoint, Frame> all = new EnumMap<>(spine);
    all.putAll(joints);
    return new Skeleton(body, pelvis, all, left, right, fingers);
  }

  /** The skeleton with some limb segments of one side placed anew. */
  public Skeleton with(Side side, Map<Limb, Frame> limbs) {
    Map<Limb, Frame> all = new EnumMap<>(side == Side.LEFT ? left : right);
    all.putAll(limbs);
    return side == Side.LEFT
        ? new Skeleton(body, pelvis, spine, all, right, fingers)
        : new Skeleton(body, pelvis, spine, left, all, fingers);
  }

  /** How a hand's fingers are bent. */
  public Fingers fingers(Side side) {
    return fingers.getOrDefault(side, Fingers.REST);
  }

  /** The skeleton with every finger joint of a hand bent alike; see {@link Fingers#curl}. */
  public Skeleton withCurl(Side side, double degrees) {
    return with(side, Fingers.curl(degrees));
  }

  /** The skeleton with one hand's fingers bent anew. */
  public Skeleton with(Side side, Fingers bent) {
    Map<Side, Fingers> all = new EnumMap<>(fingers);
    all.put(side, bent);
    return new Skeleton(body, pelvis, spine, left, right, all);
  }

  private static Frame moved(Frame frame, Vec way) {
    return new Frame(frame.origin().plus(way), frame.axes());
  }

  private static <K extends Enum<K>> Map<K, Frame> moved(Map<K, Frame> frames, Vec way) {
    Map<K, Frame> all = new EnumMap<>(frames);
    all.replaceAll((key, frame) -> moved(frame, way));
    return all;
  }

  private static Frame turned(Frame frame, Frame to) {
    return new Frame(to.point(frame.origin()), to.axes().then(frame.axes()));
  }

  private static <K extends Enum<K>> Map<K, Frame> turned(Map<K, Frame> frames, Frame to) {
    Map<K, Frame> all = new EnumMap<>(frames);
    all.replaceAll((key, frame) -> turned(frame, to));
    return all;
  }
}
