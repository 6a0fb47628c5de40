package goniograph.render.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Blocks are measured in millimetres on their page, lines by what stands on them. */
class MeasuresTest {
  private static final double DOT = 0.02;

  private static BlockMeasure only(String language, String style, String body) {
    List<BlockMeasure> blocks = Pages.renderBody(language, style, body).blocks();
    assertEquals(1, blocks.size());
    return blocks.get(0);
  }

  @Test
  void aBlockHasTheSizeItsStyleGives() {
    BlockMeasure block =
        only(
            "en",
            "#fit-box { margin: 20mm 0 0 30mm; width: 50mm; height: 40mm; padding: 1mm }",
            "<div id='fit-box'>A</div>");
    assertEquals("fit-box", block.id());
    assertEquals(0, block.page());
    assertEquals(10 + 30, block.left(), DOT);
    assertEquals(10 + 20, block.top(), DOT);
    assertEquals(52, block.width(), DOT);
    assertEquals(42, block.height(), DOT);
  }

  @Test
  void linesTellTextAndSize() {
    BlockMeasure block =
        only(
            "en",
            "div { width: 52mm; font: 14pt/7mm 'Noto Sans' } b { font-size: 20pt }",
            "<div data-fit='steps'>Stand up <b>slowly</b>, then sit down again.</div>");
    assertEquals("steps", block.id());
    assertEquals("Stand up slowly,", block.lines().get(0).text());
    assertEquals(14, block.lines().get(0).smallest(), 0.1);
    assertEquals(20, block.lines().get(0).largest(), 0.1);
    assertEquals(14, block.lines().get(1).largest(), 0.1);
    assertEquals(block.top() + block.height(), block.contentBottom(), DOT);
  }

  @Test
  void arabicLinesKeepTheirReadingOrder() {
    BlockMeasure block =
        only(
            "ar",
            "div { font-family: 'Noto Sans Arabic' }",
            "<div id='fit-a'>قف <b>8 مرات</b> ثم PDF اجلس.</div>");
    assertEquals("قف 8 مرات ثم PDF اجلس.", block.lines().get(0).text());
  }

  @Test
  void saysWhichLinesDoNotFit() {
    BlockMeasure block =
        only(
            "en",
            "div { width: 30mm; height: 14mm; font: 14pt/7mm 'Noto Sans' }",
            "<div id='fit-face'>one two three four five six seven eight nine</div>");
    assertEquals(14, block.height(), DOT);
    assertTrue(block.contentBottom() > block.top() + 20, block.toString());
    int lines = block.lines().size();
    assertEquals(lines - 2, block.linesBelow(14).size());
    assertEquals(block.lines().get(2), block.linesBelow(14).get(0));
  }

  @Test
  void aBlockThatRunsOnTellsThePageOfEachLine() {
    BlockMeasure block =
        only(
            "en",
            "div { line-height: 100mm; font-size: 14pt }",
            "<div id='fit-long'>a<br/>b<br/>c</div>");
    assertEquals(List.of(0, 0, 1), block.lines().stream().map(BlockMeasure.Line::page).toList());
    assertEquals(
        List.of("c"), block.linesBelow(277).stream().map(BlockMeasure.Line::text).toList());
  }

  @Test
  void firstColumnOfAnArabicTableStandsAtTheRight() {
    String cells = "<td data-fit='first'>أ</td><td data-fit='last'>ب</td>";
    String style = "table { width: 100mm; table-layout: fixed; border-spacing: 0 }";
    RenderedPdf pdf = Pages.renderBody("ar", style, "<table><tr>" + cells + "</tr></table>");
    BlockMeasure first = pdf.blocks().get(0);
    BlockMeasure last = pdf.blocks().get(1);
    assertEquals(last.left() + last.width(), first.left(), DOT);
  }
}
