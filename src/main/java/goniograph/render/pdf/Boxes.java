package goniograph.render.pdf;

import com.openhtmltopdf.layout.Layer;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.InlineLayoutBox;
import com.openhtmltopdf.render.LineBox;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Walks the layout engine's boxes. */
final class Boxes {
  private final Set<Box> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Consumer<Box> visitor;

  private Boxes(Consumer<Box> visitor) {
    this.visitor = visitor;
  }

  /** Every box of a laid out page once, parents first, positioned blocks behind the flow. */
  static void visitPage(BlockBox root, Consumer<Box> visitor) {
    Boxes boxes = new Boxes(visitor);
    boxes.visit(root);
    boxes.visitLayer(root.getLayer());
  }

  /** A box and every box in it, parents first. */
  static void visitTree(Box box, Consumer<Box> visitor) {
    new Boxes(visitor).visit(box);
  }

  private void visitLayer(Layer layer) {
    visit(layer.getMaster());
    layer.getChildren().forEach(this::visitLayer);
  }

  private void visit(Box box) {
    if (seen.add(box)) {
      visitor.accept(box);
      parts(box).forEach(this::visit);
    }
  }

  private static List<Box> parts(Box box) {
    List<Box> parts = new ArrayList<>();
    if (box instanceof InlineLayoutBox inline) {
      for (Object child : inline.getInlineChildren()) {
        if (child instanceof Box part) {
          parts.add(part);
        }
      }
    }
    parts.addAll(box.getChildren());
    if (box instanceof LineBox line) {
      parts.addAll(line.getNonFlowContent());
    }
    return parts;
  }
}
