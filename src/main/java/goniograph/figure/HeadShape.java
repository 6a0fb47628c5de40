package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Side;
import goniograph.body.Skeleton;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The head: skull, jaw, nose, hair, ears, eyes and a short mouth; no expression. */
final class HeadShape {
  private static final double ENLARGED = 1.06;
  private static final Vec SKULL = new Vec(.058, .065, .046).times(ENLARGED);
  private static final Vec JAW = new Vec(.038, .040, .034);

  private final Projection paper;
  private final Frame head;
  private final Vec joint;

  HeadShape(Projection paper, Skeleton skeleton) {
    Frame neck = skeleton.spine(SpineJoint.C0);
    this.paper = paper;
    this.joint = neck.origin();
    this.head = new Frame(neck.point(.016, .023, 0), neck.axes());
  }

  Part part() {
    double facing = paper.facing(head.axes().x());
    boolean profile = facing > -.35 && facing < .80;
    Geometry skull = Hulls.hull(Hulls.ellipsoid(paper, head, Vec.ZERO, SKULL));
    Geometry jaw = Hulls.hull(Hulls.ellipsoid(paper, head, new Vec(.020, -.030, 0), JAW));
    Geometry face = Hulls.closed(Hulls.union(skull, jaw), paper.mm(.02));
    Geometry hair = new Hair(paper, head, SKULL).area();
    Geometry outline = profile ? Hulls.union(face, hair, nose()) : Hulls.union(face, hair);
    List<Part.Region> regions = new ArrayList<>();
    regions.add(new Part.Region(Tone.SKIN, outline));
    regions.add(new Part.Region(Tone.HAIR, hair));
    ears(regions);
    eyes(regions);
    return new Part(
        Part.Id.of(Kind.HEAD),
        Role.NEAR,
        outline,
        regions,
        lines(regions, facing),
        List.of(new Part.Weld(Part.Id.of(Kind.TRUNK), paper.at(joint), 0, paper.mm(.06))),
        new Solid.Bones(List.of(joint, head.origin())));
  }

  private Geometry nose() {
    double rx = SKULL.x();
    Geometry wedge =
        Hulls.hull(
            List.of(
                paper.at(head.point(rx - .004, .012, 0)),
                paper.at(head.point(rx + .016, -.012, 0)),
                paper.at(head.point(rx - .002, -.019, 0)),
                paper.at(head.point(rx - .030, -.004, .008)),
                paper.at(head.point(rx - .030, -.004, -.008))));
    return Hulls.closed(Hulls.widened(wedge, paper.mm(.0015)), paper.mm(.002));
  }

  /** Ears cover the hair and carry an outline of their own, which {@link #lines} adds. */
  private void ears(List<Part.Region> regions) {
    for (Side side : Side.values()) {
      if (paper.facing(head.axes().z().times(side.sign())) > .25) {
        Vec ear = head.point(-.006, -.004, side.sign() * SKULL.z());
        Geometry area =
            Hulls.hull(
                Hulls.disc(paper, ear, head.axes().x().times(.0105), head.axes().y().times(.0165)));
        regions.add(new Part.Region(Tone.SKIN, area));
      }
    }
  }

  private void eyes(List<Part.Region> regions) {
    for (Side side : Side.values()) {
      Vec unit = new Vec(.83, .06, side.sign() * .55).unit();
      Vec out =
          head.axes()
              .apply(new Vec(unit.x() / SKULL.x(), unit.y() / SKULL.y(), unit.z() / SKULL.z()))
              .unit();
      if (paper.facing(out) > .22) {
        Vec at = head.point(SKULL.x() * unit.x(), SKULL.y() * unit.y(), SKULL.z() * unit.z());
        Vec across = head.axes().y().cross(out).unit();
        regions.add(
            new Part.Region(
                Tone.HAIR,
                Hulls.hull(
                    Hulls.disc(paper, at, across.times(.0052), head.axes().y().times(.0078)))));
      }
    }
  }

  private List<Geometry> lines(List<Part.Region> regions, double facing) {
    List<Geometry> lines = new ArrayList<>();
    for (Part.Region region : regions.subList(2, regions.size())) {
      if (region.tone() == Tone.SKIN) {
        lines.add(region.area().getBoundary());
      }
    }
    if (facing >= .50) {
      lines.add(noseLine());
    }
    if (facing > .45) {
      lines.add(mouth());
    }
    return lines;
  }

  private Geometry mouth() {
    List<Coordinate> curve = new ArrayList<>();
    for (int i = -3; i <= 3; i++) {
      double z = .0045 * i;
      curve.add(paper.at(head.point(.0565 - 6 * z * z, -.038, z)));
    }
    return Hulls.line(curve.toArray(new Coordinate[0]));
  }

  /** The ridge and the underside of a nose that points at the viewer. */
  private Geometry noseLine() {
    double rx = SKULL.x();
    return Hulls.line(
        paper.at(head.point(rx + .002, .004, 0)),
        paper.at(head.point(rx + .014, -.012, .003)),
        paper.at(head.point(rx, -.018, -.002)));
  }
}
