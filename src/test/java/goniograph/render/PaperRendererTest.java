package goniograph.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.render.pdf.BlockMeasure;
import goniograph.sheet.Sheet;
import goniograph.sheet.Steps;
import goniograph.testing.PdfConformance;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A page model on paper: it fits or says what does not, and the fold runs through white. */
class PaperRendererTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final String DIGEST = "0".repeat(64);

  private static Paper paper(Sheet sheet) {
    return new PaperRenderer().render(sheet, Layout.STANDARD, DIGEST, TODAY);
  }

  @Test
  void aLeafHasTwoPagesAndFits() {
    Paper paper = paper(SampleSheet.chairRise());
    assertEquals(2, paper.pages());
    assertEquals(List.of(), paper.overflows());
    assertEquals(List.of(), paper.missing());
    assertEquals(List.of(), paper.warnings());
    assertEquals(List.of(), PdfConformance.failures(paper.pdf()));
  }

  /**
   * job.md, R7: never a silent shrink; the block, how many lines, and the first that does not fit.
   */
  @Test
  void tooManyStepsAreReported() {
    Sheet sample = SampleSheet.chairRise();
    List<Steps.Item> items = new ArrayList<>(sample.steps().items());
    for (int n = 5; n <= 12; n++) {
      items.add(new Steps.Step(n, "One more step, number " + n + "."));
    }
    Sheet longer =
        new Sheet(
            sample.identity(),
            sample.band(),
            sample.head(),
            sample.older(),
            sample.why(),
            sample.dose(),
            sample.drawings(),
            new Steps(
                sample.steps().label(), items, sample.steps().careLabel(), sample.steps().care()),
            sample.know(),
            sample.stop(),
            sample.contact(),
            sample.foot(),
            sample.back());
    List<Overflow> overflows = paper(longer).overflows();
    assertEquals(List.of(Block.STEPS), overflows.stream().map(Overflow::block).toList());
    assertTrue(overflows.get(0).lines() >= 4, overflows.toString());
  }

  /** job.md 3.11: one fold at mid height, 148.5 mm, through the white above a step. */
  @Test
  void theFoldMovesTheAreaLeast() {
    List<BlockMeasure> steps =
        List.of(step(0, 130), step(1, 137), step(2, 144), step(3, 151), step(4, 158));
    Fold fold = Fold.of(steps, 250).orElseThrow();
    assertEquals(2, fold.step());
    assertEquals(148.5, 144 + fold.shift() + Fold.HALF_WHITE, 1e-9);
  }

  @Test
  void anAreaIsNotFoldedOffThePaper() {
    assertEquals(Optional.empty(), Fold.of(List.of(step(0, 50), step(1, 57)), 250));
  }

  private static BlockMeasure step(int number, double top) {
    return new BlockMeasure("fit-step-" + number, 0, 18, top, 180, 7, top + 7, List.of());
  }
}
