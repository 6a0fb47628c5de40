package goniograph.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.finding.Finding;
import goniograph.source.Span;
import goniograph.testing.Browser;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The page for the clinical lead; judged by axe-core in Chromium. */
class FindingsHtmlTest {
  private static Finding of(Finding finding, String entry) {
    return finding.withEntry(entry).withSource("common-practice");
  }

  private static final Span HERE =
      new Span("content/exercises/ba-stand/en.md", 400, 404, 31, 21, 31, 25);
  private static final Span SHARED = new Span("shared/clinic.yaml", 0, 4, 9, 17, 9, 19);
  private static final Finding LIMIT =
      of(Finding.error("dose-limit", HERE, "`hold` is 90 s <b>.", "Harm.", "Less."), "ba-stand");
  private static final Finding SPEED =
      of(Finding.warning("ladder-jump", HERE, "A big step.", "Sore.", "Two steps."), "ba-stand");
  private static final Finding STANDS = SPEED.withWhat("Another big step.").asAccepted();
  private static final Finding OTHER =
      of(Finding.note("version-missing", HERE, "No Arabic.", "…", "Write it."), "ab-lift");
  private static final Finding CLINIC =
      Finding.note("reading-level", SHARED, "لا توجد درجة.", "…", "Ask a reader.");

  private static String html(List<Finding> findings) {
    LocalDate today = LocalDate.of(2026, 11, 25);
    return FindingsHtml.of(new FindingsReport(today, "library", 2, findings), List.of());
  }

  private static final List<Finding> ALL = List.of(LIMIT, SPEED, STANDS, OTHER, CLINIC);

  @Test
  void hasNoAccessibilityViolation() {
    try (Browser browser = Browser.start()) {
      assertEquals(List.of(), browser.violations(html(ALL), false));
      assertEquals(List.of(), browser.violations(html(List.of()), false));
    }
  }

  @Test
  void standsBySheetAndThenByLevelWithTheAcceptedOnesLast() {
    List<String> headings =
        html(ALL)
            .lines()
            .filter(line -> line.matches("<h[23].*"))
            .map(line -> line.replaceAll("<[^>]*>", ""))
            .toList();
    assertEquals(
        List.of(
            "ab-lift",
            "1 note",
            "ba-stand",
            "1 error",
            "1 warning",
            "Accepted",
            "What all sheets share",
            "1 note"),
        sortedGroups(headings));
  }

  /** Both entries share one file here, so which comes first is not the point. */
  private static List<String> sortedGroups(List<String> headings) {
    int other = headings.indexOf("ab-lift");
    int stand = headings.indexOf("ba-stand");
    int shared = headings.indexOf("What all sheets share");
    List<String> sorted = new ArrayList<>(headings.subList(other, other + 2));
    sorted.addAll(headings.subList(stand, stand + 4));
    sorted.addAll(headings.subList(shared, headings.size()));
    assertEquals(headings.size(), sorted.size());
    return sorted;
  }

  @Test
  void saysRulePlaceWhyMendAndSourceAndEscapesWords() {
    String html = html(List.of(LIMIT));
    for (String part :
        List.of(
            "<dt>Why</dt><dd>Harm.",
            "<dt>Mend</dt><dd>Less.",
            "<dt>Source</dt><dd>common-practice",
            "<dt>Place</dt><dd>content/exercises/ba-stand/en.md, line 31",
            "<dt>Rule</dt><dd>dose-limit",
            "`hold` is 90 s &lt;b")) {
      assertTrue(html.contains(part), part + " in\n" + html);
    }
  }

  @Test
  void isBlackNeedsNoScriptAndIsTheSameInAnyOrder() {
    String html = html(ALL);
    assertFalse(html.contains("<script") || html.matches("(?s).*(src|href)=.*"));
    assertTrue(html.contains("size: A4"));
    assertFalse(html.replaceAll("#(fff|000)\\b", "").matches("(?s).*#[0-9a-f]{3,6}\\b.*"));
    List<Finding> turned = new ArrayList<>(ALL);
    Collections.reverse(turned);
    assertEquals(html, html(turned));
  }
}
