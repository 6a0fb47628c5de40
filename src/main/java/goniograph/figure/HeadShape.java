package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Lengths;
import goniograph.body.Side;
import goniograph.body.SpineJoint;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The head: skull, jaw, nose, hair or head covering, ears, eyes and a short mouth. */
final class HeadShape {
  private static final Vec JAW = new Vec(.038, .040, .034);

  private final Projection paper;
  private final Grown grown;
  private final boolean covered;
  private final Frame head;
  private final Vec joint;
  private final Vec skull;

  /**
   * @param covered true for a head covering in place of hair
   */
  HeadShape(Projection paper, Grown grown, boolean covered) {
    Frame neck = grown.skeleton().spine(SpineJoint.C0);
    Vec lift = grown.headLift(neck.axes(), Lengths.SKULL);
    this.paper = paper;
    this.grown = grown;
    this.covered = covered;
    this.joint = neck.origin();
    this.head = new Frame(neck.point(Lengths.HEAD).plus(lift), neck.axes());
    this.skull = Lengths.SKULL.times(grown.head());
  }

  Part part() {
    double facing = paper.facing(head.axes().x());
    boolean profile = facing > -.35 && facing < .80;
    Geometry round = Hulls.hull(Hulls.ellipsoid(paper, head, Vec.ZERO, skull));
    Geometry jaw =
        Hulls.hull(
            Hulls.ellipsoid(
                paper, head, new Vec(.020, -.030, 0).times(grown.head()), JAW.times(grown.head())));
    Geometry face = Hulls.closed(Hulls.union(round, jaw), paper.mm(.02));
    List<Part.Region> regions = new ArrayList<>();
    List<Geometry> lines = new ArrayList<>();
    Geometry outline = profile ? Hulls.union(face, nose()) : face;
    if (covered) {
      HeadCovering cloth = new HeadCovering(paper, grown, head);
      outline = cloth.dress(outline, regions, lines);
    } else {
      outline = hair(outline, regions);
      ears(regions, lines);
    }
    eyes(regions);
    noseAndMouth(lines, facing);
    return new Part(
        Part.Id.of(Kind.HEAD),
        Role.NEAR,
        outline,
        regions,
        lines,
        List.of(new Part.Weld(Part.Id.of(Kind.TRUNK), paper.at(joint), 0, paper.mm(.06))),
        new Solid.Bones(List.of(joint, head.origin())));
  }

  private Geometry hair(Geometry face, List<Part.Region> regions) {
    Geometry hair = new Hair(paper, head, skull).area();
    Geometry outline = Hulls.union(face, hair);
    regions.add(new Part.Region(Tone.SKIN, outline));
    regions.add(new Part.Region(Tone.HAIR, hair));
    return outline;
  }

  /** A point of the head at the size it is drawn. */
  private Vec at(double x, double y, double z) {
    return head.point(new Vec(x, y, z).times(grown.head()));
  }

  private Geometry nose() {
    double rx = Lengths.SKULL.x();
    Geometry wedge =
        Hulls.hull(
            List.of(
                paper.at(at(rx - .004, .012, 0)),
                paper.at(at(rx + .016, -.012, 0)),
                paper.at(at(rx - .002, -.019, 0)),
                paper.at(at(rx - .030, -.004, .008)),
                paper.at(at(rx - .030, -.004, -.008))));
    return Hulls.closed(Hulls.widened(wedge, paper.mm(.0015)), paper.mm(.002));
  }

  /** Ears cover the hair and carry an outline of their own. */
  private void ears(List<Part.Region> regions, List<Geometry> lines) {
    for (Side side : Side.values()) {
      if (paper.facing(head.axes().z().times(side.sign())) > .25) {
        Vec ear = at(-.006, -.004, side.sign() * Lengths.SKULL.z());
        Geometry area = oval(ear, head.axes().x(), .0105, .0165);
        regions.add(new Part.Region(Tone.SKIN, area));
        lines.add(area.getBoundary());
      }
    }
  }

  private Geometry oval(Vec middle, Vec across, double width, double height) {
    return Hulls.hull(
        Hulls.disc(
            paper,
            middle,
            across.times(width * grown.head()),
            head.axes().y().times(height * grown.head())));
  }

  private void eyes(List<Part.Region> regions) {
    for (Side side : Side.values()) {
      Vec unit = new Vec(.83, .06, side.sign() * .55).unit();
      Vec out =
          head.axes()
              .apply(new Vec(unit.x() / skull.x(), unit.y() / skull.y(), unit.z() / skull.z()))
              .unit();
      if (paper.facing(out) > .22) {
        Vec at = head.point(skull.x() * unit.x(), skull.y() * unit.y(), skull.z() * unit.z());
        Vec across = head.axes().y().cross(out).unit();
        regions.add(new Part.Region(Tone.HAIR, oval(at, across, .0052, .0078)));
      }
    }
  }

  private void noseAndMouth(List<Geometry> lines, double facing) {
    if (facing >= .50) {
      lines.add(noseLine());
    }
    if (facing > .45) {
      lines.add(mouth());
    }
  }

  private Geometry mouth() {
    List<Coordinate> curve = new ArrayList<>();
    for (int i = -3; i <= 3; i++) {
      double z = .0045 * i;
      curve.add(paper.at(at(.0565 - 6 * z * z, -.038, z)));
    }
    return Hulls.line(curve.toArray(new Coordinate[0]));
  }

  /** The ridge and the underside of a nose that points at the viewer. */
  private Geometry noseLine() {
    double rx = Lengths.SKULL.x();
    return Hulls.line(
        paper.at(at(rx + .002, .004, 0)),
        paper.at(at(rx + .014, -.012, .003)),
        paper.at(at(rx, -.018, -.002)));
  }
}
