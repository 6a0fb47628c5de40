package goniograph.figure;

import goniograph.body.Frame;
import goniograph.body.Lengths;
import goniograph.body.SpineJoint;
import goniograph.body.Turn;
import goniograph.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Plain cloth over hair, ears and neck that falls to the shoulders; the face is free. */
final class HeadCovering {
  private static final double THICK = .0075;

  /** Folds show where the head faces the viewer this much. */
  private static final double FRONT = .5;

  /** The cloth falls lower in front. */
  private static final double FALL = -24;

  private static final int AROUND = 32;

  private final Projection paper;
  private final Grown grown;
  private final Frame head;

  /**
   * @param head a frame with its origin in the middle of the skull
   */
  HeadCovering(Projection paper, Grown grown, Frame head) {
    this.paper = paper;
    this.grown = grown;
    this.head = head;
  }

  /** Adds cloth, face and folds of a bare head's area; gives the whole area. */
  Geometry dress(Geometry bare, List<Part.Region> regions, List<Geometry> lines) {
    Geometry cloth = Hulls.closed(Hulls.union(cap(), drape()), paper.mm(.02));
    Geometry face = seen() ? Hulls.both(face(), bare) : Hulls.PAPER.createPolygon();
    Geometry outline = Hulls.union(cloth, face);
    regions.add(new Part.Region(Tone.CLOTH, outline));
    regions.add(new Part.Region(Tone.SKIN, face));
    lines.add(Hulls.edgeWithin(face, outline));
    if (paper.facing(head.axes().x()) > FRONT) {
      lines.add(Hulls.both(folds(), Hulls.widened(outline, -paper.mm(.006))));
    }
    return outline;
  }

  private boolean seen() {
    return paper.facing(head.axes().x()) > -.35;
  }

  private Geometry cap() {
    Vec round = Lengths.SKULL.times(grown.head()).plus(new Vec(THICK, THICK, THICK));
    List<Coordinate> rims = new ArrayList<>(Hulls.ellipsoid(paper, head, Vec.ZERO, round));
    Geometry skull = Hulls.hull(rims);
    Geometry jaw =
        Hulls.hull(
            Hulls.ellipsoid(
                paper,
                head,
                new Vec(.014, -.032, 0).times(grown.head()),
                new Vec(.038, .042, .038).times(grown.head())));
    return Hulls.union(skull, jaw);
  }

  /** From under the chin over neck and collar to the shoulders. */
  private Geometry drape() {
    Frame neck = grown.skeleton().spine(SpineJoint.C5);
    Frame chest = grown.skeleton().spine(SpineJoint.T2);
    return Hulls.chain(
        List.of(
            Hulls.ball(paper, at(.008, -.040, 0), .036 * grown.head()),
            Hulls.ball(paper, neck.point(.006, .004, 0), .040),
            ring(chest, .016, .020, .062, .052),
            ring(chest, .026, 0, .072, .062)));
  }

  private List<Coordinate> ring(Frame frame, double x, double y, double width, double depth) {
    Turn axes = frame.axes().then(Turn.aboutZ(FALL));
    return Hulls.disc(paper, frame.point(x, y, 0), axes.x().times(depth), axes.z().times(width));
  }

  /** The opening: an oval from brow to chin that lies round the front of the head. */
  private Geometry face() {
    List<Coordinate> oval = new ArrayList<>();
    for (int i = 0; i < AROUND; i++) {
      double t = 2 * Math.PI * i / AROUND;
      double z = .039 * Math.cos(t);
      double y = -.010 + .056 * Math.sin(t);
      oval.add(paper.at(at(.062 - 16 * z * z - 2 * y * y, y, z)));
    }
    oval.add(paper.at(at(Lengths.SKULL.x() + .020, -.012, 0)));
    return Hulls.hull(oval);
  }

  /** Two folds from under the chin to the breast. */
  private Geometry folds() {
    Frame chest = grown.skeleton().spine(SpineJoint.T2);
    return Hulls.PAPER.buildGeometry(
        List.of(
            Hulls.line(
                paper.at(at(.030, -.074, .020)),
                paper.at(chest.point(.062, .032, .010)),
                paper.at(chest.point(.074, .016, -.014))),
            Hulls.line(
                paper.at(at(.030, -.078, -.012)), paper.at(chest.point(.064, .022, -.036)))));
  }

  private Vec at(double x, double y, double z) {
    return head.point(new Vec(x, y, z).times(grown.head()));
  }
}
