package goniograph.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import goniograph.finding.Finding;
import goniograph.source.Span;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FindingsReportTest {
  private static final Finding LONG_HOLD =
      Finding.error(
              "dose-limit",
              new Span("content/exercises/ba-stand/en.md", 400, 404, 31, 21, 31, 25),
              "`hold` is 90 s, the limit is `1..60 s`.",
              "Too much is harm.",
              "Write a value within `1..60 s`.")
          .withEntry("ba-stand")
          .withBecause("step 2: hold 90 s")
          .withSource("common-practice");
  private static final Finding DUE =
      Finding.warning(
          "review-due",
          new Span("content/advice/ad-soreness/ar.md", 0, 4, 1, 1, 1, 3),
          "فات موعد المراجعة.",
          "…",
          "Review it.");

  private static FindingsReport report(Finding... findings) {
    return new FindingsReport(LocalDate.of(2026, 11, 25), "library", 2, List.of(findings));
  }

  @Test
  void textIsByEntryNamesThePlaceFirstAndCountsLast() {
    assertEquals(
        """
        == ba-stand ==

        error content/exercises/ba-stand/en.md:31:21 dose-limit
          `hold` is 90 s, the limit is `1..60 s`.
          why: Too much is harm.
          because: step 2: hold 90 s
          mend: Write a value within `1..60 s`.
          source: common-practice

        == What all sheets share ==

        warning content/advice/ad-soreness/ar.md:1:1 review-due
          فات موعد المراجعة.
          why: …
          mend: Review it.

        1 error, 1 warning, 0 notes in 2 entries as of 2026-11-25.
        """,
        FindingsText.of(report(LONG_HOLD, DUE)));
  }

  @Test
  void jsonHasTheFieldsOfTheDesignInTheirOrder() {
    JsonNode root = JsonMapper.shared().readTree(FindingsJson.of(report(LONG_HOLD)));
    assertEquals(List.of("tool", "today", "library", "findings"), names(root));
    JsonNode finding = root.get("findings").get(0);
    assertEquals(
        List.of(
            "rule",
            "level",
            "entry",
            "language",
            "file",
            "line",
            "column",
            "endLine",
            "endColumn",
            "what",
            "why",
            "because",
            "mend",
            "mendGrade",
            "accepted",
            "source"),
        names(finding));
    assertEquals("error", finding.get("level").asString());
    assertEquals(21, finding.get("column").asInt());
    assertEquals("show", finding.get("mendGrade").asString());
  }

  @Test
  void theOrderOfFindingsDoesNotDependOnWhoFoundThemFirst() {
    assertEquals(FindingsJson.of(report(LONG_HOLD, DUE)), FindingsJson.of(report(DUE, LONG_HOLD)));
  }

  private static List<String> names(JsonNode node) {
    return List.copyOf(node.propertyNames());
  }
}
