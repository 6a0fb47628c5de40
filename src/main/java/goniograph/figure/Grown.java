package goniograph.figure;

import goniograph.body.Build;
import goniograph.body.Lengths;
import goniograph.body.Skeleton;
import goniograph.body.TrunkSection;
import goniograph.body.Turn;
import goniograph.body.Vec;

/**
 * The reference shapes of a body made thicker or thinner for a build, always away from what they
 * rest on: where a shape lies, its lowest edge stays; where the trunk is upright, its back stays.
 *
 * @param build how the person is built
 * @param skeleton the solved body
 */
record Grown(Build build, Skeleton skeleton) {
  private static final Vec DOWN = Vec.UP.times(-1);

  /** The tip of the nose from the middle of the head. */
  private static final Vec NOSE = new Vec(Lengths.SKULL.x() + .016, -.012, 0);

  /** The share of the waist's growth that each trunk section takes, from below. */
  private static final double[] SHARE = {.5, .7, .9, 1.1, 1.2, 1.0, .7, .6, .4, .3};

  /** The share of the upper back's rounding. */
  private static final double[] ROUND = {0, 0, 0, 0, .1, .4, .8, 1, 1, .8};

  /** A trunk section by its number from below. */
  TrunkSection section(int i) {
    TrunkSection plain = TrunkSection.ALL.get(i);
    double width = plain.halfWidth() * (1 + build.width() * SHARE[i]);
    double depth = plain.halfDepth() * (1 + build.depth() * SHARE[i]);
    Vec down = plain.frame(skeleton).axes().invert(DOWN);
    double lying = down.x() * down.x() + down.z() * down.z();
    double ahead = (1 - lying) * (depth - plain.halfDepth()) - build.rounding() * ROUND[i];
    Vec way = new Vec(down.x(), 0, down.z()).unit();
    double lower =
        Math.hypot(depth * way.x(), width * way.z())
            + ahead * way.x()
            - Math.hypot(plain.halfDepth() * way.x(), plain.halfWidth() * way.z());
    Vec moved = new Vec(ahead, 0, 0).minus(way.times(lying * lower));
    return new TrunkSection(plain.joint(), plain.centre().plus(moved), width, depth);
  }

  /** The radius of a limb that takes {@code share} of the limbs' growth here. */
  double radius(double plain, double share) {
    return plain * (1 + build.limbs() * share);
  }

  /** How a ball of a limb moves when it grows, so that its lower edge stays. */
  Vec lift(Turn limb, double plain, double grown) {
    Vec across = DOWN.minus(limb.y().times(limb.y().dot(DOWN)));
    return across.times(-across.length() * (grown - plain));
  }

  /** The head's size against the reference. */
  double head() {
    return 1 + build.head();
  }

  /** How the middle of the head moves when it grows: upright half up, lying off its support. */
  Vec headLift(Turn head, Vec radii) {
    double upright = Math.abs(head.y().y());
    Vec d = head.invert(DOWN);
    double skull = new Vec(d.x() * radii.x(), d.y() * radii.y(), d.z() * radii.z()).length();
    double reach = Math.max(skull, NOSE.dot(d));
    double lying = 1 - upright * upright;
    Vec up = head.y().times(.5 * build.head() * radii.y() * upright * upright);
    return up.plus(Vec.UP.times(build.head() * reach * lying));
  }
}
