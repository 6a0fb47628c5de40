package goniograph.figure;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** One stroke or area of a finished drawing; later ones cover earlier ones. */
sealed interface Paint {
  /** What is covered, in mm. */
  Geometry shape();

  String colour();

  /** The same elsewhere. */
  Paint moved(AffineTransformation by);

  /**
   * A painted area.
   *
   * @param lined true where a line is drawn along its edge, so that the edge itself is not seen
   */
  record Area(Geometry shape, String colour, boolean lined) implements Paint {
    Area(Geometry shape, String colour) {
      this(shape, colour, false);
    }

    @Override
    public Paint moved(AffineTransformation by) {
      return new Area(by.transform(shape), colour, lined);
    }
  }

  /**
   * A drawn line.
   *
   * @param width mm
   * @param round true for round ends, false for ends cut square at the last point
   * @param dash lengths of strokes and gaps in mm; empty for an unbroken line
   */
  record Line(Geometry shape, String colour, double width, boolean round, List<Double> dash)
      implements Paint {
    public Line {
      dash = List.copyOf(dash);
    }

    @Override
    public Paint moved(AffineTransformation by) {
      return new Line(by.transform(shape), colour, width, round, dash);
    }

    /** The same pen along other lines. */
    Line along(Geometry other) {
      return new Line(other, colour, width, round, dash);
    }

    static Line solid(Geometry shape, String colour, double width) {
      return new Line(shape, colour, width, true, List.of());
    }

    static Line cut(Geometry shape, String colour, double width) {
      return new Line(shape, colour, width, false, List.of());
    }
  }

  /**
   * Lettering.
   *
   * @param shape the box it fills
   * @param path its outlines as path data, from the start of its base line
   * @param x where that starts, mm
   * @param y the base line, mm
   * @param casing the white left free round it, mm
   */
  record Word(Geometry shape, String colour, String path, double x, double y, double casing)
      implements Paint {
    @Override
    public Paint moved(AffineTransformation by) {
      Coordinate at = by.transform(new Coordinate(x, y), new Coordinate());
      return new Word(by.transform(shape), colour, path, at.x, at.y, casing);
    }
  }
}
