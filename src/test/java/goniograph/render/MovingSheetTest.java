package goniograph.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import goniograph.figure.FigureOptions;
import goniograph.figure.Motion;
import goniograph.figure.Style;
import goniograph.library.Library;
import goniograph.pose.PoseFile;
import goniograph.pose.PoseReader;
import goniograph.pose.PoseSolver;
import goniograph.sheet.Drawings;
import goniograph.source.DiskFiles;
import goniograph.testing.Browser;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The moving drawing as Chromium plays it. The clock is put forward by the Web Animations API, so
 * nothing waits.
 */
class MovingSheetTest {
  private static final String SEEN =
      "() => [...document.querySelectorAll('.motion g')]"
          + ".map(g => getComputedStyle(g).visibility === 'visible' ? '1' : '0').join('')";
  private static final String RUNNING =
      "() => document.getAnimations().filter(a => a.playState === 'running').length";
  private static final String DISPLAYED =
      "() => [...document.querySelectorAll('.drawings figure')]"
          + ".filter(f => f.offsetParent !== null || f.getClientRects().length > 0)"
          + ".map(f => f.className)";

  private final String html = ScreenRenderer.html(SampleSheet.chairRise());

  private static String seenAt(Page page, int milliseconds) {
    page.evaluate("t => document.getAnimations().forEach(a => a.currentTime = t)", milliseconds);
    return String.valueOf(page.evaluate(SEEN));
  }

  @Test
  void standsStillUntilItIsSwitchedOnAndWhenItIsSwitchedOff() {
    try (Browser browser = Browser.start()) {
      Page page = browser.open(html, Browser.As.SCREEN);
      assertEquals(0, page.evaluate(RUNNING));
      page.keyboard().press("Tab");
      page.keyboard().press("Space");
      assertTrue(((Number) page.evaluate(RUNNING)).intValue() > 10);
      page.keyboard().press("Space");
      assertEquals(0, page.evaluate(RUNNING));
    }
  }

  /** Nine frames, there and back: 20 turns of a fifth of a second. */
  @Test
  void showsNineFramesAndComesBackToTheFirst() {
    try (Browser browser = Browser.start()) {
      Page page = browser.open(html, Browser.As.SCREEN);
      page.check(".motion input");
      TreeSet<String> frames = new TreeSet<>();
      for (int turn = 0; turn < 20; turn++) {
        frames.add(seenAt(page, turn * 200 + 100));
      }
      assertEquals(9, frames.size());
      assertNotEquals(seenAt(page, 100), seenAt(page, 2300));
      assertEquals(seenAt(page, 700), seenAt(page, 3900));
      assertEquals(seenAt(page, 100), seenAt(page, 4100));
    }
  }

  @Test
  void theSwitchHasAName() {
    try (Browser browser = Browser.start()) {
      Page page = browser.open(html, Browser.As.SCREEN);
      assertEquals(1, page.getByLabel("Show the movement").count());
    }
  }

  @Test
  void whoWantsNoMotionAndWhoPrintsSeesStartAndEndSideBySide() {
    try (Browser browser = Browser.start()) {
      for (Browser.As as : new Browser.As[] {Browser.As.STILL_SCREEN, Browser.As.PRINT}) {
        Page page = browser.open(html, as);
        assertEquals(java.util.List.of("", "", ""), page.evaluate(DISPLAYED));
        assertEquals(0, page.evaluate(RUNNING));
      }
    }
  }

  @Test
  void keepsWithinItsSize() {
    Drawings.Motion motion = SampleSheet.motion().orElseThrow();
    int bytes = (motion.svg() + motion.style()).getBytes(StandardCharsets.UTF_8).length;
    assertTrue(bytes < 100_000, bytes + " bytes");
    assertTrue(html.getBytes(StandardCharsets.UTF_8).length < 300_000);
  }

  /** Every movement of the library, in both styles. */
  @Test
  void everyFigureKeepsWithinItsSize() {
    Library library = Library.read(DiskFiles.at(Path.of(""))).library();
    library
        .figures()
        .forEach(
            (id, file) -> {
              PoseFile pose = PoseReader.read(file, library.figures(), finding -> {}).get(0);
              for (Style style : Style.values()) {
                Motion.of(PoseSolver.solve(pose).scene(), FigureOptions.STANDARD.in(style))
                    .ifPresent(
                        motion -> {
                          int size = motion.svg(id, "").length() + motion.style(id).length();
                          assertTrue(size < 100_000, id + " " + style + " " + size);
                        });
              }
            });
  }
}
