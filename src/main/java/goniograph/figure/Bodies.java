package goniograph.figure;

import goniograph.body.Side;
import goniograph.body.Skeleton;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Bodies shaped in one view: each once for fine and for coarse detail, and then only scaled. */
final class Bodies {
  private final Person person;
  private final Map<Detailed, Shaped> shaped = new HashMap<>();

  Bodies(Person person) {
    this.person = person;
  }

  private record Detailed(Skeleton skeleton, boolean fine) {}

  private record Shaped(List<Part> parts, double scale) {}

  /** The parts of a body; all calls must have the same view. */
  List<Part> of(Skeleton skeleton, Projection paper) {
    Shaped known =
        shaped.computeIfAbsent(
            new Detailed(skeleton, HandShape.fine(paper)),
            one -> new Shaped(shape(one.skeleton, paper), paper.scale()));
    double k = paper.scale() / known.scale;
    return k == 1 ? known.parts : known.parts.stream().map(part -> part.scaled(k)).toList();
  }

  private List<Part> shape(Skeleton skeleton, Projection paper) {
    List<Part> parts = new ArrayList<>();
    Grown grown = new Grown(person.build(), skeleton);
    parts.add(new TrunkShape(paper, grown).part());
    parts.add(new HeadShape(paper, grown, person.headCovering()).part());
    for (Side side : Side.values()) {
      parts.addAll(new LimbShapes(paper, grown).of(side));
      parts.add(new HandShape(paper, skeleton, side).part());
      parts.add(new FootShape(paper, skeleton, side).part());
    }
    return parts;
  }
}
