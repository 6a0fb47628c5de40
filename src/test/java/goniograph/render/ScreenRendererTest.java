package goniograph.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.testing.Browser;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Judged by axe-core, the open accessibility engine, in Chromium. */
class ScreenRendererTest {
  private final String html = ScreenRenderer.html(SampleSheet.chairRise());

  @Test
  void hasNoAccessibilityViolationInLightAndDark() {
    try (Browser browser = Browser.start()) {
      assertEquals(List.of(), browser.violations(html, false));
      assertEquals(List.of(), browser.violations(html, true));
    }
  }

  /**
   * WCAG 2.2, 1.4.10: 320 CSS pixels wide without scrolling sideways, save for the diary's table.
   */
  @Test
  void fitsANarrowWindow() {
    try (Browser browser = Browser.start()) {
      Object wide = browser.ask(html, 320, "() => document.documentElement.scrollWidth <= 320");
      assertEquals(true, wide);
    }
  }

  @Test
  void isSelfContainedAndNeedsNoScript() {
    assertFalse(html.contains("<script"));
    assertFalse(html.matches("(?s).*(src|href)=\"(?!#).*"));
    assertFalse(html.matches("(?s).*url\\((?!#).*"));
  }

  /** axe-core does not flag a drawing without a role or name: every svg is named or hidden. */
  @Test
  void everyDrawingIsNamedOrHidden() {
    for (String tag : html.split("(?=<svg)")) {
      if (tag.startsWith("<svg")) {
        String head = tag.substring(0, tag.indexOf('>'));
        assertTrue(
            head.contains("aria-hidden=\"true\"")
                || (head.contains("role=\"img\"") && head.contains("aria-label=\"")),
            head);
      }
    }
  }
}
