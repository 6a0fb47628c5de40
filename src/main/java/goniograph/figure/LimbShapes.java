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
  private static final Profile UPPER_ARM = Profile.of(0, .036, .25, .034, .55, .029, 1, .0235);
  private static final Profile FOREARM = Profile.of(0, .0235, .25, .026, .6, .021, 1, .0165);
  private static final Profile THIGH =
      Profile.of(0, .034, .10, .050, .16, .053, .3, .052, .65, .043, 1, .035);
  private static final Profile SHANK =
      Profile.of(0, .035, .15, .034, .32, .0365, .6, .028, 1, .0205);
  private static final Profile SLEEVE =
      Profile.of(0, .0375, .15, .0378, .35, .0365, .60, .0360, 1, .0360);

  private final Projection paper;
  private final Skeleton skeleton;

  LimbShapes(Projection paper, Skeleton skeleton) {
    this.paper = paper;
    this.skeleton = skeleton;
  }

  /** The four long parts of one side. */
  List<Part> of(Side side) {
    return List.of(upperArm(side), forearm(side), thigh(side), shank(side));
  }

  private Part upperArm(Side side) {
    Bone bone = bone(side, Limb.UPPER_ARM, Limb.FOREARM);
    List<List<Coordinate>> sleeve = new ArrayList<>();
    for (double t : new double[] {0, .06, .12}) {
      sleeve.add(Hulls.ball(paper, bone.at(t), SLEEVE.radius(t)));
    }
    for (double t : new double[] {.15, .25, .35, .45, .60}) {
      sleeve.add(bone.disc(paper, t, SLEEVE.radius(t)));
    }
    return dressed(
        Kind.UPPER_ARM,
        side,
        bone,
        balls(bone, UPPER_ARM, 0),
        Tone.SKIN,
        Tone.SHIRT,
        Hulls.chain(sleeve),
        Part.Id.of(Kind.TRUNK),
        .050);
  }

  private Part forearm(Side side) {
    Bone bone = bone(side, Limb.FOREARM, Limb.HAND);
    return plain(
        Kind.FOREARM, side, bone, FOREARM, Tone.SKIN, Part.Id.of(Kind.UPPER_ARM, side), .042);
  }

  private Part thigh(Side side) {
    Bone bone = bone(side, Limb.THIGH, Limb.SHANK);
    return plain(Kind.THIGH, side, bone, THIGH, Tone.TROUSERS, Part.Id.of(Kind.TRUNK), .085);
  }

  private Part shank(Side side) {
    Bone bone = bone(side, Limb.SHANK, Limb.FOOT);
    List<List<Coordinate>> leg = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      double t = i / 10.0;
      leg.add(Hulls.ball(paper, calf(bone, t), SHANK.radius(t) * 1.02));
    }
    for (int i = 5; i < 9; i++) {
      double t = i / 10.0;
      leg.add(bone.disc(paper, calf(bone, t), SHANK.radius(t) + (i < 6 ? .0015 : .003)));
    }
    return dressed(
        Kind.SHANK,
        side,
        bone,
        balls(bone, SHANK, 1),
        Tone.SKIN,
        Tone.TROUSERS,
        Hulls.chain(leg),
        Part.Id.of(Kind.THIGH, side),
        .055);
  }

  private Part plain(
      Kind kind, Side side, Bone bone, Profile radii, Tone tone, Part.Id on, double weld) {
    Geometry outline = balls(bone, radii, 0);
    return part(
        kind, side, bone, outline, List.of(new Part.Region(tone, outline)), List.of(), on, weld);
  }

  private Part dressed(
      Kind kind,
      Side side,
      Bone bone,
      Geometry limb,
      Tone skin,
      Tone cloth,
      Geometry clothes,
      Part.Id on,
      double weld) {
    Geometry outline = Hulls.union(limb, clothes);
    List<Part.Region> regions =
        List.of(
            new Part.Region(skin, Hulls.besides(outline, clothes)),
            new Part.Region(cloth, clothes));
    return part(
        kind, side, bone, outline, regions, List.of(Hulls.edgeWithin(clothes, outline)), on, weld);
  }

  private Part part(
      Kind kind,
      Side side,
      Bone bone,
      Geometry outline,
      List<Part.Region> regions,
      List<Geometry> inner,
      Part.Id on,
      double weld) {
    Part.Weld joint = new Part.Weld(on, paper.at(bone.from()), paper.mm(weld), paper.mm(weld));
    return new Part(
        Part.Id.of(kind, side),
        Role.NEAR,
        outline,
        regions,
        inner,
        List.of(joint),
        new Solid.Bones(List.of(bone.from(), bone.to())));
  }

  private Geometry balls(Bone bone, Profile radii, double calf) {
    List<List<Coordinate>> balls = new ArrayList<>();
    for (int i = 0; i < STATIONS; i++) {
      double t = i / (STATIONS - 1.0);
      Vec centre = calf > 0 ? calf(bone, t) : bone.at(t);
      balls.add(Hulls.ball(paper, centre, radii.radius(t)));
    }
    return Hulls.chain(balls);
  }

  /** The shank's middle line, pushed back by the calf. */
  private static Vec calf(Bone bone, double t) {
    double back = .010 * Math.exp(-Math.pow((t - .32) / .2, 2));
    return bone.at(t).minus(bone.frame().axes().x().times(back));
  }

  private Bone bone(Side side, Limb limb, Limb next) {
    return new Bone(skeleton.limb(limb, side), skeleton.limb(next, side).origin());
  }

  private record Bone(Frame frame, Vec to) {
    Vec from() {
      return frame.origin();
    }

    Vec at(double t) {
      return from().towards(to, t);
    }

    List<Coordinate> disc(Projection paper, double t, double radius) {
      return disc(paper, at(t), radius);
    }

    List<Coordinate> disc(Projection paper, Vec centre, double radius) {
      return Hulls.disc(
          paper, centre, frame.axes().x().times(radius), frame.axes().z().times(radius));
    }
  }
}
