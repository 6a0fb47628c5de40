package goniograph.render;

import goniograph.render.pdf.BlockMeasure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where an A4 sheet is folded to A5: through the white above one of its steps.
 *
 * @param step index of the step below the fold
 * @param shift how far the area moves down the paper, mm; negative is up
 */
record Fold(int step, double shift) {
  /** Half of the white that the fold runs through, mm. */
  static final double HALF_WHITE = 1.5;

  private static final double MIDDLE = 148.5;
  private static final double HIGHEST = 10.5;
  private static final double LOWEST = 285;

  /** The fold that moves the area least, or nothing where no step can come to the middle. */
  static Optional<Fold> of(List<BlockMeasure> blocks, double height) {
    return blocks.stream()
        .filter(block -> block.page() == 0 && block.id().startsWith("fit-step-"))
        .filter(block -> !block.id().equals("fit-step-0"))
        .map(Fold::above)
        .filter(fold -> fold.onPaper(height))
        .min(Comparator.comparingDouble(fold -> Math.abs(fold.shift())));
  }

  private static Fold above(BlockMeasure block) {
    int step = Integer.parseInt(block.id().substring("fit-step-".length()));
    return new Fold(step, MIDDLE - block.top() - HALF_WHITE);
  }

  private boolean onPaper(double height) {
    double top = PaperPlan.TOP + shift;
    return top >= HIGHEST && top + height <= LOWEST;
  }
}
