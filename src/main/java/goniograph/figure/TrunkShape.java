package goniograph.figure;

import goniograph.body.Limb;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.TrunkSection;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Trunk and neck: a smooth chain of ellipses across the spine, with the shoulders' capsules. */
final class TrunkShape {
  /** How many of the sections are trousers. */
  private static final int WAIST = 3;

  private static final int STEPS = 5;

  private final Projection paper;
  private final Skeleton skeleton;

  TrunkShape(Projection paper, Skeleton skeleton) {
    this.paper = paper;
    this.skeleton = skeleton;
  }

  Part part() {
    List<List<Coordinate>> rims = rims(sections());
    int waist = (WAIST - 1) * STEPS;
    Geometry hips = Hulls.chain(rims.subList(0, waist + 1));
    Geometry shirt = shirt(rims.subList(waist, rims.size()));
    Geometry neck = neck();
    Geometry outline = smooth(Hulls.union(hips, shirt, neck));
    Geometry skin = Hulls.minus(neck, shirt);
    Geometry cloth = fromAbove() ? shirt : Hulls.minus(shirt, hips);
    Geometry legs = trousers(Hulls.minus(Hulls.minus(outline, cloth), skin));
    Geometry top = Hulls.largest(Hulls.minus(Hulls.minus(outline, legs), skin));
    List<Part.Region> regions =
        List.of(
            new Part.Region(Tone.TROUSERS, Hulls.besides(outline, Hulls.union(top, skin))),
            new Part.Region(Tone.SHIRT, top),
            new Part.Region(Tone.SKIN, Hulls.both(skin, outline)));
    List<Geometry> inner = List.of(Hulls.edgeWithin(top, outline));
    return new Part(Part.Id.of(Kind.TRUNK), Role.NEAR, outline, regions, inner, List.of(), bones());
  }

  /** Seen from above, a waist is the near rim of its ring, which hangs; from below it arches. */
  private boolean fromAbove() {
    return paper.facing(skeleton.spine(SpineJoint.L5S1).axes().y()) > 0;
  }

  /** What the shirt leaves, without the slivers beside it where the outline is smoothed. */
  private Geometry trousers(Geometry rest) {
    return Hulls.largest(Hulls.opened(rest, paper.mm(.006)));
  }

  private Geometry smooth(Geometry area) {
    return Hulls.opened(Hulls.closed(area, paper.mm(.012)), paper.mm(.006));
  }

  private Geometry shirt(List<List<Coordinate>> rims) {
    Geometry shirt = Hulls.chain(rims);
    for (Side side : Side.values()) {
      Vec shoulder = skeleton.limb(Limb.UPPER_ARM, side).origin();
      Vec nape = skeleton.spine(SpineJoint.C7).point(.006, -.010, 0);
      Vec chest = skeleton.spine(SpineJoint.T8).point(.034, 0, 0);
      shirt =
          Hulls.union(
              shirt, capsule(nape, .020, shoulder, .034), capsule(chest, .055, shoulder, .030));
    }
    return Hulls.opened(Hulls.closed(shirt, paper.mm(.018)), paper.mm(.006));
  }

  private Geometry capsule(Vec a, double ra, Vec b, double rb) {
    return Hulls.chain(List.of(Hulls.ball(paper, a, ra), Hulls.ball(paper, b, rb)));
  }

  private Geometry neck() {
    return Hulls.chain(
        List.of(
            neckBall(SpineJoint.C7, .006, .031),
            neckBall(SpineJoint.C5, .001, .029),
            neckBall(SpineJoint.C3, 0, .0285),
            neckBall(SpineJoint.C0, 0, .029)));
  }

  private List<Coordinate> neckBall(SpineJoint joint, double ahead, double radius) {
    return Hulls.ball(paper, skeleton.spine(joint).point(ahead, 0, 0), radius);
  }

  private Solid.Bones bones() {
    List<Vec> line = new ArrayList<>();
    line.add(skeleton.pelvis().origin());
    for (SpineJoint joint : SpineJoint.values()) {
      line.add(skeleton.spine(joint).point(joint.compareTo(SpineJoint.C7) < 0 ? .02 : 0, 0, 0));
    }
    return new Solid.Bones(line);
  }

  private List<Section> sections() {
    List<Section> sections = new ArrayList<>();
    for (TrunkSection section : TrunkSection.ALL) {
      Turn axes = section.frame(skeleton).axes();
      sections.add(
          new Section(
              section.middle(skeleton),
              axes.x().times(section.halfDepth()),
              axes.z().times(section.halfWidth())));
    }
    return sections;
  }

  /** The sections and those between them, by Catmull-Rom. */
  private List<List<Coordinate>> rims(List<Section> sections) {
    List<List<Coordinate>> rims = new ArrayList<>();
    for (int i = 0; i + 1 < sections.size(); i++) {
      for (int step = 0; step < STEPS; step++) {
        rims.add(between(sections, i, step / (double) STEPS).rim(paper));
      }
    }
    rims.add(sections.get(sections.size() - 1).rim(paper));
    return rims;
  }

  private static Section between(List<Section> all, int i, double t) {
    Section a = all.get(Math.max(0, i - 1));
    Section b = all.get(i);
    Section c = all.get(i + 1);
    Section d = all.get(Math.min(all.size() - 1, i + 2));
    return new Section(
        spline(a.centre, b.centre, c.centre, d.centre, t),
        spline(a.front, b.front, c.front, d.front, t),
        spline(a.side, b.side, c.side, d.side, t));
  }

  private static Vec spline(Vec a, Vec b, Vec c, Vec d, double t) {
    Vec one = c.minus(a).times(.5 * t);
    Vec two = a.times(2).minus(b.times(5)).plus(c.times(4)).minus(d).times(.5 * t * t);
    Vec three = b.times(3).minus(a).minus(c.times(3)).plus(d).times(.5 * t * t * t);
    return b.plus(one).plus(two).plus(three);
  }

  /** An ellipse across the trunk, by its half axes. */
  private record Section(Vec centre, Vec front, Vec side) {
    List<Coordinate> rim(Projection paper) {
      return Hulls.disc(paper, centre, front, side);
    }
  }
}
