package goniograph.render;

import goniograph.render.pdf.BlockMeasure;
import java.util.ArrayList;
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
    above(named, "fit-upper", "fit-lower", "steps", overflows);
    above(named, "fit-back-main", "fit-diary", "back", overflows);
    above(named, "fit-ladder", "fit-diary", "ladder", overflows);
    above(named, "fit-diary", "fit-back-foot", "diary", overflows);
    stopBox(named, overflows);
    return overflows;
  }

  private static void above(
      Map<String, BlockMeasure> named,
      String upper,
      String lower,
      String name,
      List<Overflow> overflows) {
    BlockMeasure block = named.get(upper);
    BlockMeasure below = named.get(lower);
    if (block == null || below == null || block.contentBottom() <= below.top() + SLACK) {
      return;
    }
    List<BlockMeasure.Line> over = block.linesBelow(below.top() - block.top());
    overflows.add(
        new Overflow(name, Math.max(1, over.size()), over.isEmpty() ? "" : over.get(0).text()));
  }

  private static void stopBox(Map<String, BlockMeasure> named, List<Overflow> overflows) {
    BlockMeasure stop = named.get("fit-stop");
    if (stop != null && stop.lines().size() > STOP_LINES + 1) {
      List<BlockMeasure.Line> over = stop.lines().subList(STOP_LINES + 1, stop.lines().size());
      overflows.add(new Overflow("stop box", over.size(), over.get(0).text()));
    }
  }
}
