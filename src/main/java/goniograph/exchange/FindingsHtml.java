package goniograph.exchange;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.Entry;
import goniograph.library.Library;
import goniograph.register.AcceptedFinding;
import goniograph.register.RegisterReader;
import goniograph.render.FindingsPage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Findings as a page to print: by sheet, then by level, what someone lets stand apart. */
public final class FindingsHtml {
  private final Map<String, Entry> entries = new LinkedHashMap<>();

  private FindingsHtml(List<Entry> entries) {
    entries.forEach(entry -> this.entries.put(entry.id(), entry));
  }

  /**
   * The page.
   *
   * @param entries the entries of the library, for their titles and for who accepted what
   */
  public static String of(FindingsReport report, List<Entry> entries) {
    FindingsHtml page = new FindingsHtml(entries);
    List<FindingsPage.Group> groups = new ArrayList<>();
    report.byEntry().forEach((entry, findings) -> groups.add(page.group(entry, findings)));
    return new FindingsPage(report.today().toString(), report.summary(), groups).html();
  }

  private FindingsPage.Group group(String entry, List<Finding> findings) {
    List<FindingsPage.Part> parts = new ArrayList<>();
    for (Level level : Level.values()) {
      List<Finding> open =
          findings.stream().filter(one -> one.level() == level && !one.accepted()).toList();
      add(parts, FindingsReport.counted(open.size(), level.word()), open);
    }
    add(parts, "Accepted", findings.stream().filter(Finding::accepted).toList());
    return new FindingsPage.Group(
        entry.isEmpty() ? "library" : "entry-" + entry, title(entry), parts);
  }

  private void add(List<FindingsPage.Part> parts, String heading, List<Finding> findings) {
    if (!findings.isEmpty()) {
      parts.add(new FindingsPage.Part(heading, findings.stream().map(this::item).toList()));
    }
  }

  private FindingsPage.Item item(Finding finding) {
    List<FindingsPage.Line> lines = new ArrayList<>();
    add(lines, "Why", finding.why());
    add(lines, "Because", finding.because());
    add(lines, "Mend", finding.mend());
    add(lines, "Source", finding.source());
    add(lines, "Language", finding.language());
    add(lines, "Place", finding.at().file() + ", line " + finding.at().line());
    add(lines, "Rule", finding.rule());
    acceptance(finding).ifPresent(words -> add(lines, "Accepted", words));
    return new FindingsPage.Item(finding.what(), lines);
  }

  private static void add(List<FindingsPage.Line> lines, String label, String text) {
    if (!text.isEmpty()) {
      lines.add(new FindingsPage.Line(label, text));
    }
  }

  private Optional<String> acceptance(Finding finding) {
    return Optional.ofNullable(finding.accepted() ? entries.get(finding.entry()) : null)
        .flatMap(
            entry ->
                RegisterReader.entry(entry).value().accepted().stream()
                    .filter(one -> one.about(finding))
                    .findFirst())
        .map(FindingsHtml::words);
  }

  private static String words(AcceptedFinding one) {
    return "by " + one.by() + " until " + one.until() + ": " + one.reason();
  }

  private String title(String id) {
    if (id.isEmpty()) {
      return FindingsReport.SHARED;
    }
    return Optional.ofNullable(entries.get(id))
        .map(entry -> entry.common().versions().get(Library.SOURCE_LANGUAGE))
        .flatMap(version -> version.body().title())
        .map(title -> title.plain() + " (" + id + ")")
        .orElse(id);
  }
}
