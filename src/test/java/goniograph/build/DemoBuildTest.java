package goniograph.build;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import goniograph.finding.Level;
import goniograph.source.DiskFiles;
import goniograph.source.MemoryFiles;
import goniograph.testing.Browser;
import goniograph.testing.PdfConformance;
import goniograph.testing.Programs;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The demo library, built whole as the README says, and judged from outside. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoBuildTest {
  private static final LocalDate TODAY =
      LocalDate.parse(System.getProperty("goniograph.demo.today", "2026-11-25"));
  private static final Pattern TAG = Pattern.compile("(?s)<style.*?</style>|<svg.*?</svg>|<[^>]*>");

  private final MemoryFiles out = new MemoryFiles();
  private BuildReport report = new BuildReport(List.of(), List.of(), List.of());

  @BeforeAll
  void build() {
    report = build(out, 2);
  }

  private static BuildReport build(MemoryFiles into, int jobs) {
    Examined examined = Examined.of(DiskFiles.at(Path.of("")), TODAY);
    return new Builder(examined, TODAY, BuildOrder.ALL.withJobs(jobs), line -> {}).build(into);
  }

  @Test
  void everySheetIsThereAndNothingIsWrong() {
    assertEquals(
        List.of(),
        report.findings().stream()
            .filter(finding -> finding.level() != Level.NOTE)
            .map(finding -> finding.at().file() + " " + finding.what())
            .toList());
    assertEquals(List.of(), report.leftOut());
    assertEquals(8, report.sheets().size());
    assertEquals(17, out.list("").size());
  }

  /** design.md, part 5: same files and same today, same bytes, however many are made at a time. */
  @Test
  void twoBuildsGiveTheSameBytes() {
    MemoryFiles again = new MemoryFiles();
    build(again, 1);
    assertEquals(out.list(""), again.list(""));
    for (String path : out.list("")) {
      assertArrayEquals(out.bytes(path).orElseThrow(), again.bytes(path).orElseThrow(), path);
    }
  }

  /** veraPDF, the reference validator of ISO 14289-1 and ISO 19005-2. */
  @Test
  void everyPdfMeetsPdfUa1AndPdfA2a() {
    for (String path : paths(".pdf")) {
      assertEquals(List.of(), PdfConformance.failures(out.bytes(path).orElseThrow()), path);
    }
  }

  /** axe-core in Chromium: WCAG 2.2 A and AA, and its best practices. */
  @Test
  void everyPageHasNoAccessibilityViolation() {
    try (Browser browser = Browser.start()) {
      for (String path : paths(".html")) {
        assertEquals(List.of(), browser.violations(html(path), false), path);
        assertEquals(List.of(), browser.violations(html(path), true), path);
      }
    }
  }

  /** Every word of the screen page in Arabic comes back by poppler from the paper, 88 of 100. */
  @Test
  void arabicCopiesOutOfThePdf() {
    for (String path : paths(".pdf")) {
      if (path.startsWith("ar/")) {
        List<String> words = words(visible(html(path.replace(".pdf", ".html"))));
        List<String> found =
            new ArrayList<>(words(Programs.popplerText(out.bytes(path).orElseThrow())));
        List<String> lost = words.stream().filter(word -> !found.remove(word)).toList();
        double share = 100.0 * (words.size() - lost.size()) / words.size();
        assertTrue(share >= 88, () -> path + ": " + share + " % came back, lost " + lost);
      }
    }
  }

  /** Digits, ranges and the clinic's numbers stay true, in English and in Arabic. */
  @Test
  void numbersStayTrueOnPaper() {
    for (String language : List.of("en", "ar")) {
      String text = plain(paper(language, "ba-heel-toe-stand"));
      for (String number : List.of("+00 0000 0100", "+00 0000 0199", "8:00–17:00", "0–10")) {
        assertTrue(text.contains(number), () -> language + ": " + number + " is lost in\n" + text);
      }
    }
  }

  /** The side words of the two dose rows: the right foot first, as it is drawn. */
  @Test
  void leftAndRightStayTrueOnPaper() {
    String english = plain(paper("en", "ba-heel-toe-stand"));
    assertTrue(
        english.indexOf("Right foot in front: 3 times.")
            < english.indexOf("Left foot in front: 3 times."));
    assertTrue(english.contains("Right foot in front: 3 times."), english);
    String arabic = plain(paper("ar", "ba-heel-toe-stand"));
    int right = arabic.indexOf("اليمنى");
    assertTrue(right >= 0 && right < arabic.indexOf("اليسرى"), arabic);
  }

  /**
   * One page model: what the screen says, paper says, word by word; only the headings of dose and
   * steps, which on paper are seen by their place, and the switch of the moving drawing are the
   * screen's own.
   */
  @Test
  void paperAndScreenSayTheSame() {
    for (String path : paths(".pdf")) {
      if (path.startsWith("en/")) {
        List<String> screen =
            words(
                visible(
                    html(path.replace(".pdf", ".html"))
                        .replaceAll("<h2[^>]*quiet[^>]*>.*?</h2>", "")
                        .replaceAll("(?s)<figure class=\"motion\">.*?</figure>", "")));
        List<String> paper = words(Programs.popplerText(out.bytes(path).orElseThrow()));
        List<String> onPaper = new ArrayList<>(paper);
        assertEquals(
            List.of(), screen.stream().filter(word -> !onPaper.remove(word)).toList(), path);
      }
    }
  }

  /** job.md part 6 and figures/method.md section 16: two drawings on a page share no id. */
  @Test
  void idsOnAPageAreUnique() {
    for (String path : paths(".html")) {
      Matcher ids = Pattern.compile(" id=\"([^\"]*)\"").matcher(html(path));
      List<String> seen = new ArrayList<>();
      while (ids.find()) {
        assertFalse(seen.contains(ids.group(1)), path + ": " + ids.group(1));
        seen.add(ids.group(1));
      }
    }
  }

  private List<String> paths(String ending) {
    return out.list("").stream().filter(path -> path.endsWith(ending)).toList();
  }

  private String html(String path) {
    return new String(out.bytes(path).orElseThrow(), StandardCharsets.UTF_8);
  }

  private String paper(String language, String entry) {
    return Programs.popplerText(
        out.bytes(language + "/standard-a4/" + entry + ".pdf").orElseThrow());
  }

  private static String visible(String html) {
    return TAG.matcher(html.replaceAll("(?s)<title>.*?</title>", " "))
        .replaceAll(" ")
        .replace("&amp;", "&")
        .replace("&lt;", "<")
        .replace("&gt;", ">");
  }

  /** Without direction controls, in compatibility form. */
  private static String plain(String text) {
    return Normalizer.normalize(
            text.replaceAll("[\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069]", " "),
            Normalizer.Form.NFKC)
        .replaceAll("\\s+", " ");
  }

  private static List<String> words(String text) {
    return Pattern.compile("[\\p{L}\\p{M}\\p{N}]+")
        .matcher(plain(text))
        .results()
        .map(found -> found.group())
        .toList();
  }
}
