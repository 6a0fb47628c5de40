package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Upper arm, forearm, thigh and shank: chains of balls, dressed in chains that end in discs. */
final class LimbShapes {
  private static final int STATIONS = 21;

  /** Sleeves and trouser legs are balls up to this station, then discs down to the hem. */
  private static final double[] SLEEVE_AT = {0, .06, .12, .15, .25, .35, .45, .60};

  private static final int SLEEVE_BALLS = 3;
  private static final double[] LEG_AT = {0, .1, .2, .3, .4, .5, .6, .7, .8};
  private static final int LEG_BALLS = 5;

  private static final Profile UPPER_ARM = Profile.of(0, .033, .25, .033, .55, .029, 1, .0235);
  private static final Profile FOREARM = Profile.of(0, .0235, .25, .026, .6, .021, 1, .0165);
  private static final Profile THIGH =
      Profile.of(0, .034, .10, .050, .16, .053, .3, .052, .65, .043, 1, .035);
  private static final Profile SHANK =
      Profile.of(0, .035, .15, .034, .32, .0365, .6, .028, 1, .0205);
  private static final Profile SLEEVE =
      Profile.of(0, .0345, .15, .0365, .35, .0365, .60, .0360, 1, .0360);
  private static final Profile TROUSERS =
      Profile.of(
          0, .0357, .15, .0347, .32, .0372, .4, .0362, .5, .0340, .6, .0310, .7, .0290, .8, .0272);

  /** The share of the limbs' growth along each limb: joints and ends take little. */
  private static final Profile ARM_GROWS = Profile.of(0, .6, .25, 1, .6, .9, 1, .5);

  private static final Profile FOREARM_GROWS = Profile.of(0, .5, .3, .6, 1, .1);
  private static final Profile THIGH_GROWS = Profile.of(0, .8, .3, 1, .65, .8, 1, .35);
  private static final Profile SHANK_GROWS = Profile.of(0, .35, .32, .6, 1, .1);

  private final Projection paper;
  private final Skeleton skeleton;
  private final Grown grown;

  LimbShapes(Projection paper, Grown grown) {
    this.paper = paper;
    this.skeleton = grown.skeleton();
    this.grown = grown;
  }

  /** The four long parts of one side. */
  List<Part> of(Side side) {
    return List.of(upperArm(side), forearm(side), thigh(side), shank(side));
  }

  private Part upperArm(Side side) {
    Bone bone = bone(side, Limb.UPPER_ARM, Limb.FOREARM, 0);
    return dressed(
        Kind.UPPER_ARM,
        side,
        bone,
        balls(bone, UPPER_ARM, ARM_GROWS),
        Tone.SHIRT,
        clothes(bone, SLEEVE, ARM_GROWS, SLEEVE_AT, SLEEVE_BALLS),
        weld(Part.Id.of(Kind.TRUNK), bone, .050, .8));
  }

  private Part forearm(Side side) {
    Bone bone = bone(side, Limb.FOREARM, Limb.HAND, 0);
    Geometry outline = balls(bone, FOREARM, FOREARM_GROWS);
    Part.Weld elbow = weld(Part.Id.of(Kind.UPPER_ARM, side), bone, .042, .5);
    return plain(Kind.FOREARM, side, bone, outline, Tone.SKIN, elbow);
  }

  private Part thigh(Side side) {
    Bone bone = bone(side, Limb.THIGH, Limb.SHANK, 0);
    Geometry outline = balls(bone, THIGH, THIGH_GROWS);
    Part.Weld hip = weld(Part.Id.of(Kind.TRUNK), bone, .085, .8);
    return plain(Kind.THIGH, side, bone, outline, Tone.TROUSERS, hip);
  }

  private Part shank(Side side) {
    Bone bone = bone(side, Limb.SHANK, Limb.FOOT, .010);
    return dressed(
        Kind.SHANK,
        side,
        bone,
        balls(bone, SHANK, SHANK_GROWS),
        Tone.TROUSERS,
        clothes(bone, TROUSERS, SHANK_GROWS, LEG_AT, LEG_BALLS),
        weld(Part.Id.of(Kind.THIGH, side), bone, .055, .35));
  }

  private Part plain(
      Kind kind, Side side, Bone bone, Geometry outline, Tone tone, Part.Weld joint) {
    return part(
        kind, side, bone, outline, List.of(new Part.Region(tone, outline)), List.of(), joint);
  }

  private Part dressed(
      Kind kind,
      Side side,
      Bone bone,
      Geometry limb,
      Tone cloth,
      Geometry clothes,
      Part.Weld joint) {
    Geometry outline = Hulls.union(limb, clothes);
    List<Part.Region> regions =
        List.of(new Part.Region(Tone.SKIN, outline), new Part.Region(cloth, clothes));
    return part(
        kind, side, bone, outline, regions, List.of(Hulls.edgeWithin(clothes, outline)), joint);
  }

  private static Part part(
      Kind kind,
      Side side,
      Bone bone,
      Geometry outline,
      List<Part.Region> regions,
      List<Geometry> inner,
      Part.Weld joint) {
    return new Part(
        Part.Id.of(kind, side),
        Role.NEAR,
        outline,
        regions,
        inner,
        List.of(joint),
        new Solid.Bones(List.of(bone.from(), bone.to())));
  }

  /** A weld grows with the limb, or a large build keeps a line in its joints. */
  private Part.Weld weld(Part.Id on, Bone bone, double radius, double share) {
    double mm = paper.mm(Math.max(radius, grown.radius(radius, share)));
    return new Part.Weld(on, paper.at(bone.from()), mm, mm);
  }

  private Geometry balls(Bone bone, Profile radii, Profile grows) {
    List<Coordinate> centres = new ArrayList<>();
    List<Double> sizes = new ArrayList<>();
    for (int i = 0; i < STATIONS; i++) {
      double t = i / (STATIONS - 1.0);
      double plain = radii.radius(t);
      double radius = grown.radius(plain, grows.radius(t));
      centres.add(paper.at(middle(bone, t, plain, radius)));
      sizes.add(paper.mm(radius));
    }
    return new Tube(centres, sizes).area();
  }

  /**
   * Cloth round a limb: a ball at the joint, and a hem across the limb, or it looks like a bulb.
   */
  private Geometry clothes(Bone bone, Profile radii, Profile grows, double[] at, int balls) {
    List<List<Coordinate>> rims = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      double radius = radii.radius(at[i]);
      rims.add(i < balls ? ball(bone, at[i], radius, grows) : disc(bone, at[i], radius, grows));
    }
    return Hulls.chain(rims);
  }

  private List<Coordinate> ball(Bone bone, double t, double plain, Profile grows) {
    double radius = grown.radius(plain, grows.radius(t));
    return Hulls.ball(paper, middle(bone, t, plain, radius), radius);
  }

  private List<Coordinate> disc(Bone bone, double t, double plain, Profile grows) {
    double radius = grown.radius(plain, grows.radius(t));
    Vec x = bone.frame().axes().x().times(radius);
    Vec z = bone.frame().axes().z().times(radius);
    return Hulls.disc(paper, middle(bone, t, plain, radius), x, z);
  }

  private Vec middle(Bone bone, double t, double plain, double radius) {
    return bone.at(t).plus(grown.lift(bone.frame().axes(), plain, radius));
  }

  private Bone bone(Side side, Limb limb, Limb next, double calf) {
    return new Bone(skeleton.limb(limb, side), skeleton.limb(next, side).origin(), calf);
  }

  /** A limb's middle line, pushed back by {@code calf} where the calf is fullest. */
  private record Bone(Frame frame, Vec to, double calf) {
    Vec from() {
      return frame.origin();
    }

    Vec at(double t) {
      double back = calf * Math.exp(-Math.pow((t - .32) / .2, 2));
      return from().towards(to, t).minus(frame.axes().x().times(back));
    }
  }
}
