package goniograph.figure;

import goniograph.pose.Prop;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** A held elastic band: a strip along its course, wide enough to be seen. */
final class BandShape {
  /** A band of the trade is 12 to 15 cm wide and held gathered; drawn as a strip of 3 cm. */
  private static final double WIDTH = .018;

  private static final double LEAST_MM = 1.1;

  /** Two strands this near run together, mm. */
  private static final double SLIT = .5;

  private BandShape() {}

  static Part part(Projection paper, Prop band, int number) {
    double half = Math.max(LEAST_MM, paper.mm(WIDTH)) / 2;
    BufferParameters flat =
        new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_ROUND, 5);
    Geometry line = Hulls.line(paper, band.line());
    Geometry strip = Hulls.closed(BufferOp.bufferOp(line, half, flat), SLIT);
    return new Part(
        new Part.Id(Kind.PROP, Optional.empty(), number),
        Role.SUPPORT,
        strip,
        List.of(new Part.Region(Tone.BAND, strip)),
        List.of(),
        List.of(),
        new Solid.Bones(band.line()));
  }
}
