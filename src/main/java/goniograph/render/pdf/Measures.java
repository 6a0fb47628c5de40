package goniograph.render.pdf;

import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.layout.Layer;
import com.openhtmltopdf.render.BlockBox;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.InlineLayoutBox;
import com.openhtmltopdf.render.InlineText;
import com.openhtmltopdf.render.LineBox;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/**
 * Measures the blocks of a page that ask for it: those with an {@code id} that starts with {@code
 * fit-} and those with a {@code data-fit}. The layout engine counts in dots of 1/20 CSS pixel.
 */
final class Measures {
  private static final double MM = 25.4 / 96 / 20;
  private static final double POINTS = 72.0 / 96 / 20;

  private final RenderingContext context;
  private final Layer paper;

  private Measures(RenderingContext context, Layer paper) {
    this.context = context;
    this.paper = paper;
  }

  /** The measured blocks, once the pages have their places. */
  static List<BlockMeasure> of(BlockBox root, RenderingContext context) {
    Measures measures = new Measures(context, root.getLayer());
    List<BlockMeasure> blocks = new ArrayList<>();
    Set<Element> measured = new HashSet<>();
    Boxes.visitPage(
        root,
        box -> {
          Element element = box.getElement();
          if (box instanceof BlockBox
              && element != null
              && asks(element)
              && measured.add(element)) {
            blocks.add(measures.block(id(element), box));
          }
        });
    return blocks;
  }

  private static boolean asks(Element element) {
    return element.hasAttribute("data-fit") || element.getAttribute("id").startsWith("fit-");
  }

  private static String id(Element element) {
    return element.getAttribute(element.hasAttribute("data-fit") ? "data-fit" : "id");
  }

  private BlockMeasure block(String id, Box box) {
    Rectangle edge = box.getBorderEdge(box.getAbsX(), box.getAbsY(), context);
    PageBox page = page(edge.y);
    List<BlockMeasure.Line> lines = new ArrayList<>();
    int[] bottom = {edge.y};
    Boxes.visitTree(
        box,
        part -> {
          if (part != box) {
            bottom[0] = Math.max(bottom[0], bottom(part));
          }
          if (part instanceof LineBox line && !text(line).isEmpty()) {
            lines.add(line(line));
          }
        });
    return new BlockMeasure(
        id,
        page.getPageNo(),
        (edge.x + page.getMarginBorderPadding(context, CalculatedStyle.LEFT)) * MM,
        onPage(edge.y, page),
        edge.width * MM,
        edge.height * MM,
        onPage(bottom[0], page),
        lines);
  }

  /** Lower edge of a block or line; the parts of a line reach no lower than the line counts. */
  private int bottom(Box part) {
    if (part instanceof BlockBox) {
      Rectangle edge = part.getBorderEdge(part.getAbsX(), part.getAbsY(), context);
      return edge.y + edge.height;
    }
    return part instanceof LineBox ? part.getAbsY() + part.getHeight() : 0;
  }

  private BlockMeasure.Line line(LineBox line) {
    PageBox page = page(line.getAbsY());
    DoubleSummaryStatistics sizes =
        texts(line)
            .mapToDouble(text -> text.getParent().getStyle().getFont(context).size * POINTS)
            .summaryStatistics();
    return new BlockMeasure.Line(
        text(line),
        onPage(line.getAbsY(), page),
        onPage(line.getAbsY() + line.getHeight(), page),
        page.getPageNo(),
        sizes.getMin(),
        sizes.getMax());
  }

  private PageBox page(int y) {
    return paper.getPage(context, y);
  }

  private double onPage(int y, PageBox page) {
    int margin = page.getMarginBorderPadding(context, CalculatedStyle.TOP);
    return (y - page.getTop() + margin) * MM;
  }

  private static String text(LineBox line) {
    StringBuilder words = new StringBuilder();
    texts(line).forEach(text -> words.append(text.getSubstring()));
    return words.toString().strip();
  }

  /** The texts of a line in reading order, without those of blocks that stand in it. */
  private static Stream<InlineText> texts(LineBox line) {
    return line.getChildren().stream().flatMap(Measures::inlineTexts);
  }

  private static Stream<InlineText> inlineTexts(Object part) {
    if (part instanceof InlineText text) {
      return Stream.of(text);
    }
    return part instanceof InlineLayoutBox inline
        ? inline.getInlineChildren().stream().flatMap(Measures::inlineTexts)
        : Stream.empty();
  }
}
