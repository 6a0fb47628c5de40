package goniograph.render;

import goniograph.sheet.Counter;
import goniograph.sheet.DoseTable;
import goniograph.sheet.Drawings;
import goniograph.sheet.Sheet;
import goniograph.type.Direction;
import goniograph.type.FaceOrder;
import goniograph.type.Family;
import goniograph.type.TextOutline;
import goniograph.type.Weight;
import java.util.List;
import java.util.Locale;

/**
 * Where the 180 x 250 mm area stands on the paper, and widths that depend on content.
 *
 * @param language BCP 47 tag
 * @param rightToLeft true where the page runs from right to left
 * @param script style class of the writing system, for instance {@code arab}
 * @param top distance from the paper's upper edge to the front's area, mm
 * @param foldAbove index of the step below the fold, -1 without a fold
 */
public record PaperPlan(
    String language, boolean rightToLeft, String script, double top, int foldAbove) {
  /** Width of the area, mm. */
  public static final double WIDTH = 180;

  private static final double HEIGHT = 250;

  /** Scripts that need more leading get a taller area on A4. */
  private static final double TALL = 257;

  /** Where the area starts before the fold is known, mm. */
  public static final double TOP = 18;

  private static final double COUNTER_GAP = 3;

  /** Size of the words beside a clock, mm: 14 pt. */
  private static final double REST_WORDS = 14 * 25.4 / 72;

  private static final double PATH = 3.4;
  private static final double START_MARGIN = 18;
  private static final double END_MARGIN = 12;

  /** The plan before the fold is known. */
  static PaperPlan unfolded(String language, boolean rightToLeft, String script) {
    return new PaperPlan(language, rightToLeft, script, TOP, -1);
  }

  /** The same plan with the fold in its place. */
  PaperPlan folded(Fold fold) {
    return new PaperPlan(language, rightToLeft, script, TOP + fold.shift(), fold.step());
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
        height());
  }

  /** Height of the area, mm. */
  double height() {
    return script.equals("latn") ? HEIGHT : TALL;
  }

  /** Pages of the leaf. */
  public int pages(Sheet sheet) {
    return sheet.back().isPresent() ? 2 : 1;
  }

  /** Width of the words of a dose row, mm: what its counters leave. */
  public String wordsStyle(Sheet sheet, int row) {
    return width(WIDTH - countersWidth(sheet, row));
  }

  /** Width of the counters of a dose row, mm. */
  public String counterStyle(Sheet sheet, int row) {
    return width(countersWidth(sheet, row));
  }

  /** All rows that are counted start on one vertical line; the last row says how often. */
  private double countersWidth(Sheet sheet, int row) {
    List<DoseTable.Row> rows = sheet.dose().orElseThrow().rows();
    List<DoseTable.Row> same =
        row == rows.size() - 1 ? rows.subList(row, row + 1) : rows.subList(0, rows.size() - 1);
    return same.stream().mapToDouble(this::countersWidth).max().orElse(0);
  }

  private double countersWidth(DoseTable.Row row) {
    return row.counters().stream().mapToDouble(this::counterWidth).sum();
  }

  private double counterWidth(Counter counter) {
    double drawn = CounterGlyphs.width(counter) + COUNTER_GAP;
    return counter instanceof Counter.Clock clock ? drawn + words(clock.words()) : drawn;
  }

  /** Width of the words beside a clock, mm. */
  private double words(String words) {
    FaceOrder faces = FaceOrder.of(Family.LATIN, Weight.BOLD, language);
    Direction direction = rightToLeft ? Direction.RIGHT_TO_LEFT : Direction.LEFT_TO_RIGHT;
    return TextOutline.of(words, faces, direction, REST_WORDS).width() + COUNTER_GAP + 1;
  }

  private static String width(double mm) {
    return String.format(Locale.ROOT, "width: %.1fmm", mm);
  }

  /** Width of one panel, mm. */
  public double panelWidth(Drawings drawings) {
    return WIDTH / drawings.panels().size();
  }

  public String panelStyle(Drawings drawings) {
    return width(panelWidth(drawings));
  }

  /** The path lies on the floor of the drawing, and the drawing in front of it. */
  public String pathStyle(Drawings.Panel panel) {
    return String.format(Locale.ROOT, "padding-top: %.2fmm", panel.floor() - PATH / 2);
  }

  public String drawingStyle(Drawings.Panel panel) {
    double top = panel.wrong() ? panel.floor() : -panel.floor() - PATH / 2;
    return String.format(Locale.ROOT, "margin-top: %.2fmm", top);
  }

  /** Width of a day of the diary, mm. */
  public double dayWidth() {
    return 16;
  }
}
