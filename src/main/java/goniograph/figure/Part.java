package goniograph.figure;

import goniograph.body.Side;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * A part of the drawing: what is painted together and before or after others as a whole.
 *
 * @param id what it is
 * @param role how it is told apart
 * @param outline its whole area on paper
 * @param regions areas that fill the outline, painted in order
 * @param inner lines within the outline
 * @param welds where it flows into its neighbours without a line
 * @param solid where it is in depth
 * @param group the number of the support or thing it belongs to
 */
record Part(
    Id id,
    Role role,
    Geometry outline,
    List<Region> regions,
    List<Geometry> inner,
    List<Weld> welds,
    Solid solid,
    Optional<Integer> group) {
  Part {
    regions = List.copyOf(regions);
    inner = List.copyOf(inner);
    welds = List.copyOf(welds);
  }

  Part(
      Id id,
      Role role,
      Geometry outline,
      List<Region> regions,
      List<Geometry> inner,
      List<Weld> welds,
      Solid solid) {
    this(id, role, outline, regions, inner, welds, solid, Optional.empty());
  }

  /** What a part is: its kind, its side where it has one, and its number among several. */
  record Id(Kind kind, Optional<Side> side, int number) {
    static Id of(Kind kind) {
      return new Id(kind, Optional.empty(), 0);
    }

    static Id of(Kind kind, Side side) {
      return new Id(kind, Optional.of(side), 0);
    }

    /** True where this part hangs on the other. */
    boolean hangsOn(Id other) {
      return kind.parent().filter(parent -> parent == other.kind).isPresent()
          && (other.side.isEmpty() || other.side.equals(side));
    }
  }

  /** An area of one tone. */
  record Region(Tone tone, Geometry area) {}

  /**
   * A joint whose lines are left out: edges of either part that lie inside the other and within
   * {@code radius} mm of the joint.
   *
   * @param calm within this distance, in mm, no halo falls on either part
   */
  record Weld(Id other, Coordinate joint, double radius, double calm) {
    Weld scaled(double k) {
      Coordinate at = new Coordinate(k * joint.x, k * joint.y);
      return new Weld(other, at, k * radius, k * calm);
    }
  }

  /** True for two pieces of one support or thing. */
  boolean sameSupport(Part other) {
    return group.isPresent() && group.equals(other.group);
  }

  /** The part without corners nearer than {@code mm} to the line between their neighbours. */
  Part simplified(double mm) {
    return new Part(
        id,
        role,
        Hulls.simplified(outline, mm),
        regions.stream().map(r -> new Region(r.tone(), Hulls.simplified(r.area(), mm))).toList(),
        inner,
        welds,
        solid,
        group);
  }

  /** The part on paper of another scale. */
  Part scaled(double k) {
    AffineTransformation larger = AffineTransformation.scaleInstance(k, k);
    return new Part(
        id,
        role,
        larger.transform(outline),
        regions.stream().map(r -> new Region(r.tone(), larger.transform(r.area()))).toList(),
        inner.stream().map(larger::transform).toList(),
        welds.stream().map(weld -> weld.scaled(k)).toList(),
        solid,
        group);
  }

  Part as(Role other) {
    return new Part(id, other, outline, regions, inner, welds, solid, group);
  }

  Part unwelded() {
    return new Part(id, role, outline, regions, inner, List.of(), solid, group);
  }
}
