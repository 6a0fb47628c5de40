package goniograph.figure;

import goniograph.body.Vec;
import goniograph.pose.Box;
import goniograph.pose.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** The shapes of held things as parts: bars, balls, pillows, bands. */
final class PropShape {
  /** A bar or band thinner than this on paper could not be told from a line, mm. */
  private static final double LEAST = 1.15;

  /** A band of the trade is 12 to 15 cm wide and held gathered; drawn as a strip of 2.7 cm. */
  private static final double BAND = .016;

  /** From this radius on paper an end of a bar shows a ring, mm. */
  private static final double WIDE_END = 1;

  /** An end of a bar less turned to the viewer shows no face; the sine of the angle. */
  private static final double END_SEEN = .3;

  /** A ring more turned to the viewer lies round the outline; the sine of the angle. */
  private static final double FACE_ON = .75;

  private static final int HALF_TURN = 12;

  private final Projection paper;
  private final int number;
  private final int group;
  private final boolean elastic;

  /**
   * @param number the part's number among all of its kind
   * @param group the number of the thing it belongs to
   * @param elastic true for a band, which may have a colour of its own
   */
  PropShape(Projection paper, int number, int group, boolean elastic) {
    this.paper = paper;
    this.number = number;
    this.group = group;
    this.elastic = elastic;
  }

  /** The part of a shape; nothing of a ring whose opening faces the viewer. */
  Optional<Part> part(Shape shape) {
    if (shape instanceof Shape.Ring ring) {
      return ring(ring);
    }
    return Optional.of(
        shape instanceof Shape.Rod rod
            ? rod(rod)
            : shape instanceof Shape.Ball ball
                ? ball(ball)
                : shape instanceof Shape.Strip strip
                    ? strip(Kind.PROP, strip.line())
                    : new BoxShape(paper, (Box) shape).prop(group, number));
  }

  private Part rod(Shape.Rod rod) {
    double radius = Math.max(rod.radius(), LEAST / 2 / paper.scale());
    Vec along = rod.to().minus(rod.from()).unit();
    Vec a = along.cross(paper.toViewer());
    a = (a.length() < 1e-6 ? paper.right() : a.unit()).times(radius);
    Vec b = along.cross(a);
    List<Coordinate> first = Hulls.disc(paper, rod.from(), a, b);
    List<Coordinate> last = Hulls.disc(paper, rod.to(), a, b);
    Geometry outline = Hulls.chain(List.of(first, last));
    boolean lastSeen = paper.facing(along) > 0;
    Vec end = lastSeen ? rod.to() : rod.from();
    List<Geometry> inner = new ArrayList<>();
    if (Math.abs(paper.facing(along)) > END_SEEN && paper.mm(radius) > WIDE_END) {
      inner.add(Hulls.edgeWithin(Hulls.hull(lastSeen ? last : first), outline));
      inner.add(Hulls.hull(Hulls.disc(paper, end, a.times(.45), b.times(.45))).getBoundary());
    }
    return part(Kind.PROP, outline, inner, new Solid.Bones(List.of(rod.from(), rod.to())));
  }

  /** A circle with the near half of one seam. */
  private Part ball(Shape.Ball ball) {
    Geometry outline = Hulls.hull(Hulls.ball(paper, ball.centre(), ball.radius()));
    Vec a = paper.right().times(ball.radius());
    Vec b =
        paper.up().times(-.45 * ball.radius()).plus(paper.toViewer().times(.89 * ball.radius()));
    Geometry seam = Hulls.line(paper, halfTurn(ball.centre(), a, b));
    return part(
        Kind.PROP,
        outline,
        paper.mm(ball.radius()) > WIDE_END
            ? List.of(Hulls.both(seam, Hulls.widened(outline, -.1)))
            : List.of(),
        new Solid.Globe(ball.centre()));
  }

  private Part strip(Kind kind, List<Vec> line) {
    Geometry strip = Hulls.band(Hulls.line(paper, line), Math.max(LEAST, paper.mm(BAND)) / 2);
    return part(kind, strip, List.of(), new Solid.Bones(line));
  }

  /** The half of a ring that faces the viewer. */
  private Optional<Part> ring(Shape.Ring ring) {
    if (Math.abs(paper.facing(ring.a().cross(ring.b()).unit())) > FACE_ON) {
      return Optional.empty();
    }
    double towardsA = paper.facing(ring.a());
    double towardsB = paper.facing(ring.b());
    double nearest = Math.atan2(towardsB, towardsA);
    Vec front = ring.a().times(Math.cos(nearest)).plus(ring.b().times(Math.sin(nearest)));
    Vec side = ring.a().times(-Math.sin(nearest)).plus(ring.b().times(Math.cos(nearest)));
    return Optional.of(strip(Kind.GRIP, halfTurn(ring.centre(), side, front)));
  }

  /** From one end of {@code a} over {@code b} to the other. */
  private static List<Vec> halfTurn(Vec centre, Vec a, Vec b) {
    List<Vec> line = new ArrayList<>();
    for (int i = 0; i <= HALF_TURN; i++) {
      double t = Math.PI * i / HALF_TURN;
      line.add(centre.plus(a.times(Math.cos(t))).plus(b.times(Math.sin(t))));
    }
    return line;
  }

  private Part part(Kind kind, Geometry outline, List<Geometry> inner, Solid solid) {
    Tone tone = elastic ? Tone.BAND : Tone.SUPPORT;
    return new Part(
        new Part.Id(kind, Optional.empty(), number),
        Role.PROP,
        outline,
        List.of(new Part.Region(tone, outline)),
        inner,
        List.of(),
        solid,
        Optional.of(group));
  }
}
