package goniograph.figure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * Joins neighbouring parts: at a weld neither part has a line inside the other, so limbs flow into
 * each other; away from it they overlap like any two parts.
 */
final class Welds {
  /** Edges that run along each other within this, in mm, stay. */
  private static final double ALONG = .03;

  private final Weights weights;
  private final List<Part> parts;
  private final Map<Part.Id, Part> byId = new HashMap<>();
  private final Map<Grown, Cutter> grown = new HashMap<>();

  Welds(List<Part> parts, Weights weights) {
    this.parts = List.copyOf(parts);
    this.weights = weights;
    parts.forEach(part -> byId.put(part.id(), part));
  }

  Outline outline(Part part) {
    Geometry edge = part.outline().getBoundary();
    List<Joint> joints = joints(part);
    for (Joint joint : joints) {
      if (joint.radius > 0) {
        edge =
            Cutter.outsideAll(
                edge, List.of(grown(joint.other, -ALONG), joint.around(joint.radius)));
      }
    }
    return new Outline(edge, halo(part, edge, joints), neighbours(joints));
  }

  /** The halo leaves a welded neighbour alone at the joint, and parts of one support each other. */
  @SuppressWarnings("ReferenceEquality") // a part is only itself
  private Geometry halo(Part part, Geometry edge, List<Joint> joints) {
    Geometry halo = edge;
    for (Joint joint : joints) {
      Cutter near = grown(joint.other, weights.halo() + weights.near());
      double radius = Math.max(joint.radius, joint.calm) + weights.near();
      halo = Cutter.outsideAll(halo, List.of(near, joint.around(radius)));
    }
    for (Part other : parts) {
      if (other != part && part.sameSupport(other)) {
        halo = grown(other, weights.halo() + weights.support()).outside(halo);
      }
    }
    return halo;
  }

  /** A part widened or narrowed; each is asked for by several neighbours. */
  private Cutter grown(Part part, double mm) {
    return grown.computeIfAbsent(
        new Grown(part.id(), mm), key -> new Cutter(Hulls.widened(part.outline(), mm)));
  }

  private record Grown(Part.Id part, double mm) {}

  private static Set<Part.Id> neighbours(List<Joint> joints) {
    return joints.stream().map(joint -> joint.other.id()).collect(Collectors.toSet());
  }

  private record Joint(Part other, Coordinate at, double radius, double calm) {
    Cutter around(double mm) {
      return new Cutter(Hulls.circle(at, mm));
    }
  }

  /** The part's welds and those of others with it. */
  private List<Joint> joints(Part part) {
    List<Joint> joints = new ArrayList<>();
    for (Part.Weld weld : part.welds()) {
      Optional.ofNullable(byId.get(weld.other()))
          .ifPresent(other -> joints.add(joint(weld, other)));
    }
    for (Part other : parts) {
      for (Part.Weld weld : other.welds()) {
        if (weld.other().equals(part.id())) {
          joints.add(joint(weld, other));
        }
      }
    }
    return joints;
  }

  private static Joint joint(Part.Weld weld, Part other) {
    return new Joint(other, weld.joint(), weld.radius(), weld.calm());
  }
}
