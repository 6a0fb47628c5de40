package goniograph.figure;

import goniograph.body.Frame;
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

/**
 * Trunk and neck: a smooth chain of ellipses across the spine, with the shoulders' capsules and a
 * collar that lies lower in front.
 */
final class TrunkShape {
  private static final int STEPS = 3;

  /** Trousers reach up to this one of the rims, a little above the third section. */
  private static final int WAIST = 2 * STEPS + STEPS / 2;

  /** The collar, a ring from the nape to the breastbone, in the frame above C7. */
  private static final Vec COLLAR = new Vec(.014, -.024, 0);

  private static final double COLLAR_TILT = -32;
  private static final double COLLAR_DEPTH = .039;
  private static final double COLLAR_WIDTH = .036;

  private static final double SHOULDER = .033;

  private final Projection paper;
  private final Skeleton skeleton;
  private final Grown grown;

  TrunkShape(Projection paper, Grown grown) {
    this.paper = paper;
    this.skeleton = grown.skeleton();
    this.grown = grown;
  }

  Part part() {
    List<List<Coordinate>> rims = rims(sections());
    Geometry hips = Hulls.chain(rims.subList(0, WAIST + 1));
    Geometry shirt = shirt(rims.subList(WAIST, rims.size()));
    Geometry neck = neck();
    Geometry outline = smooth(Hulls.union(hips, shirt, neck));
    Geometry skin = collarOpen() ? neck : Hulls.minus(neck, shirt);
    Geometry cloth = fromAbove() ? shirt : Hulls.minus(shirt, hips);
    Geometry legs = trousers(Hulls.minus(Hulls.minus(outline, cloth), skin));
    Geometry top = Hulls.largest(Hulls.minus(Hulls.minus(outline, legs), skin));
    List<Part.Region> regions =
        List.of(
            new Part.Region(Tone.TROUSERS, outline),
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
    return Hulls.opened(Hulls.closed(area, paper.mm(.016)), paper.mm(.006));
  }

  private Geometry shirt(List<List<Coordinate>> rims) {
    List<List<Coordinate>> chest = new ArrayList<>(rims);
    chest.add(collar());
    Geometry shirt = Hulls.chain(chest);
    for (Side side : Side.values()) {
      shirt = Hulls.union(shirt, slope(side), flank(side));
    }
    return shirt;
  }

  /** From the side of the neck down to the tip of the shoulder. */
  private Geometry slope(Side side) {
    Vec nape = skeleton.spine(SpineJoint.C7).point(.002, .004, side.sign() * .024);
    double tip = grown.radius(SHOULDER, .6);
    Vec lift = grown.lift(skeleton.spine(SpineJoint.T2).axes(), SHOULDER, tip);
    return capsule(nape, .015, shoulder(side).plus(lift), tip);
  }

  /** From the breast to the shoulder. */
  private Geometry flank(Side side) {
    Vec chest = middle(SpineJoint.T8);
    return capsule(chest, .055 * (1 + .7 * grown.build().width()), shoulder(side), .028);
  }

  private Vec shoulder(Side side) {
    return skeleton.limb(Limb.UPPER_ARM, side).origin();
  }

  /** The middle of a grown section. */
  private Vec middle(SpineJoint joint) {
    int number = TrunkSection.ALL.indexOf(TrunkSection.at(joint));
    return grown.section(number).middle(skeleton);
  }

  private Geometry capsule(Vec a, double ra, Vec b, double rb) {
    return Hulls.chain(List.of(Hulls.ball(paper, a, ra), Hulls.ball(paper, b, rb)));
  }

  private Frame collarFrame() {
    Frame neck = skeleton.spine(SpineJoint.C7);
    return new Frame(neck.point(COLLAR), neck.axes().then(Turn.aboutZ(COLLAR_TILT)));
  }

  private List<Coordinate> collar() {
    Frame ring = collarFrame();
    return Hulls.disc(
        paper,
        ring.origin(),
        ring.axes().x().times(COLLAR_DEPTH),
        ring.axes().z().times(COLLAR_WIDTH));
  }

  /** True where the collar is looked into, so that the throat lies before its far rim. */
  private boolean collarOpen() {
    return paper.facing(collarFrame().axes().y()) > 0;
  }

  /** The neck, down to the collar where it is looked into. */
  private Geometry neck() {
    Geometry neck =
        Hulls.chain(
            List.of(
                neckBall(SpineJoint.C7, .006, .031),
                neckBall(SpineJoint.C5, .001, .029),
                neckBall(SpineJoint.C3, 0, .0285),
                neckBall(SpineJoint.C0, 0, .029)));
    return collarOpen() ? Hulls.union(neck, Hulls.hull(collar())) : neck;
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
    for (int i = 0; i < TrunkSection.ALL.size() - 1; i++) {
      TrunkSection section = grown.section(i);
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
