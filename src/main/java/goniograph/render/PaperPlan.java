package goniograph.render;

import goniograph.sheet.DoseTable;
import goniograph.sheet.Drawings;
import goniograph.sheet.Sheet;
import java.util.Locale;

/**
 * Where the 180 x 250 mm area stands on the paper, and widths that depend on content.
 *
 * @param rightToLeft true where the page runs from right to left
 * @param script style class of the writing system, for instance {@code arab}
 * @param top distance from the paper's upper edge to the front's area, mm
 * @param foldAbove index of the step below the fold, -1 without a fold
 */
public record PaperPlan(boolean rightToLeft, String script, double top, int foldAbove) {
  /** Width of the area, mm. */
  public static final double WIDTH = 180;

  /** Height of the area, mm. */
  public static final double HEIGHT = 250;

  /** Where the area starts before the fold is known, mm. */
  public static final double TOP = 18;

  private static final double COUNTER_GAP = 3;
  private static final double START_MARGIN = 18;
  private static final double END_MARGIN = 12;

  /** The plan before the fold is known. */
  static PaperPlan unfolded(boolean rightToLeft, String script) {
    return new PaperPlan(rightToLeft, script, TOP, -1);
  }

  /** The same plan with the fold in its place. */
  PaperPlan folded(Fold fold) {
    return new PaperPlan(rightToLeft, script, TOP + fold.shift(), fold.step());
  }

  /** Style of a step: white above it where the sheet is folded. */
  public String stepStyle(int step) {
    return step == foldAbove
        ? String.format(Locale.ROOT, "margin-top: %.1fmm", 2 * Fold.HALF_WHITE)
        : "margin-top: 0";
  }

  /** Whether the sheet is folded. */
  public boolean isFolded() {
    return foldAbove >= 0;
  }

  public String direction() {
    return rightToLeft ? "rtl" : "ltr";
  }

  public String bodyClass() {
    return direction() + " " + script;
  }

  public String areaStyle() {
    return areaStyle(top);
  }

  public String backStyle() {
    return areaStyle(TOP);
  }

  private String areaStyle(double from) {
    return String.format(
        Locale.ROOT,
        "left: %.1fmm; top: %.1fmm; width: %.0fmm; height: %.0fmm",
        rightToLeft ? END_MARGIN : START_MARGIN,
        from,
        WIDTH,
        HEIGHT);
  }

  /** Pages of the leaf. */
  public int pages(Sheet sheet) {
    return sheet.back().isPresent() ? 2 : 1;
  }

  /** Width of the words of every dose row, mm: what the widest row of counters leaves. */
  public String wordsStyle(Sheet sheet) {
    return String.format(Locale.ROOT, "width: %.1fmm", WIDTH - countersWidth(sheet));
  }

  /** Width of the counters of every dose row, mm: all start on one vertical line. */
  public String counterStyle(Sheet sheet) {
    return String.format(Locale.ROOT, "width: %.1fmm", countersWidth(sheet));
  }

  private static double countersWidth(Sheet sheet) {
    return sheet.dose().stream()
        .flatMap(dose -> dose.rows().stream())
        .mapToDouble(PaperPlan::countersWidth)
        .max()
        .orElse(0);
  }

  private static double countersWidth(DoseTable.Row row) {
    return row.counters().stream()
        .mapToDouble(counter -> Glyphs.width(counter) + COUNTER_GAP)
        .sum();
  }

  /** Width of one panel, mm. */
  public double panelWidth(Drawings drawings) {
    return WIDTH / drawings.panels().size();
  }

  public String panelStyle(Drawings drawings) {
    return String.format(Locale.ROOT, "width: %.2fmm", panelWidth(drawings));
  }

  /** Width of a day of the diary, mm. */
  public double dayWidth() {
    return 16;
  }
}
