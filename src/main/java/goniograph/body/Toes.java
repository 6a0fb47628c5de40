package goniograph.body;

/**
 * The toes give way to the floor: where the ball bears and the heel is raised they bend up at the
 * ball, as far as the floor asks and a toe joint can. Everywhere else they go on straight from the
 * foot.
 *
 * <p>Most extension of the first metatarsophalangeal joint: 70 degrees, American Academy of
 * Orthopaedic Surgeons, Joint Motion: Method of Measuring and Recording, 1965.
 */
public final class Toes {
  private static final double MOST = Math.toRadians(70);

  /** The joint, in the foot's frame: the middle of the rounded ball. */
  private static final Vec JOINT = new Vec(Lengths.BALL, -.023, 0);

  private static final double AHEAD = Lengths.TOE - Lengths.BALL;
  private static final double BELOW = Lengths.ANKLE + JOINT.y();

  private Toes() {}

  /** The frame in which points ahead of the ball keep the place that the flat foot gives them. */
  public static Frame frame(Skeleton s, Side side) {
    Frame foot = s.limb(Limb.FOOT, side);
    double bend = bend(foot);
    if (bend == 0) {
      return foot;
    }
    Turn axes = foot.axes().then(Turn.aboutZ(Math.toDegrees(bend)));
    return new Frame(foot.point(JOINT).minus(axes.apply(JOINT)), axes);
  }

  /** How far the toes are bent up, in radians; 0 where the sole does not face down. */
  private static double bend(Frame foot) {
    double down = Math.asin(-foot.axes().x().y());
    if (foot.axes().y().y() <= 0 || down <= 0) {
      return 0;
    }
    double high = foot.point(JOINT).y() / Math.hypot(AHEAD, BELOW);
    double allowed = Math.asin(Math.max(-1, Math.min(1, high))) - Math.atan2(BELOW, AHEAD);
    return Math.max(0, Math.min(MOST, down - allowed));
  }
}
