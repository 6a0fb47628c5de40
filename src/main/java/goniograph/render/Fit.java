package goniograph.render;

import goniograph.render.pdf.BlockMeasure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What of a laid-out page does not fit, by the budgets of the page. */
final class Fit {
  /** Lines of text below the heading that the stop box may have. */
  private static final int STOP_LINES = 8;

  private static final double SLACK = 0.3;

  private Fit() {}

  /** Every block that runs into the block below its place. */
  static List<Overflow> of(List<BlockMeasure> blocks) {
    Map<String, BlockMeasure> named = new TreeMap<>();
    blocks.forEach(block -> named.putIfAbsent(block.id(), block));
    List<Overflow> overflows = new ArrayList<>();
    above(named, "fit-upper", "fit-lower", Block.STEPS, overflows);
    above(named, "fit-back-main", "fit-diary", Block.BACK, overflows);
    above(named, "fit-ladder", "fit-diary", Block.LADDER, overflows);
    above(named, "fit-diary", "fit-back-foot", Block.DIARY, overflows);
    stopBox(named, overflows);
    return overflows;
  }

  private static void above(
      Map<String, BlockMeasure> named,
      String upper,
      String lower,
      Block place,
      List<Overflow> overflows) {
    BlockMeasure block = named.get(upper);
    BlockMeasure below = named.get(lower);
    if (block == null || below == null || block.contentBottom() <= below.top() + SLACK) {
      return;
    }
    List<BlockMeasure.Line> over = block.linesBelow(below.top() - block.top());
    overflows.add(overflow(place, over));
  }

  private static void stopBox(Map<String, BlockMeasure> named, List<Overflow> overflows) {
    BlockMeasure stop = named.get("fit-stop");
    if (stop != null && stop.lines().size() > STOP_LINES + 1) {
      List<BlockMeasure.Line> over = stop.lines().subList(STOP_LINES + 1, stop.lines().size());
      overflows.add(overflow(Block.STOP_BOX, over));
    }
  }

  /** A ring's number or a mark stands beside the first words of its line, and is no line. */
  private static Overflow overflow(Block block, List<BlockMeasure.Line> over) {
    List<BlockMeasure.Line> worded = over.stream().filter(BlockMeasure.Line::hasLetters).toList();
    return new Overflow(
        block, Math.max(1, rows(over)), worded.isEmpty() ? "" : worded.get(0).text());
  }

  /** Lines of text, what stands side by side counted once. */
  private static int rows(List<BlockMeasure.Line> lines) {
    int rows = 0;
    int page = -1;
    double bottom = 0;
    for (BlockMeasure.Line line : downwards(lines)) {
      boolean below = line.page() > page || (line.top() + line.bottom()) / 2 > bottom;
      if (below) {
        rows++;
        page = line.page();
        bottom = line.bottom();
      }
    }
    return rows;
  }

  private static List<BlockMeasure.Line> downwards(List<BlockMeasure.Line> lines) {
    return lines.stream()
        .sorted(
            Comparator.comparingInt(BlockMeasure.Line::page)
                .thenComparingDouble(BlockMeasure.Line::top))
        .toList();
  }
}
