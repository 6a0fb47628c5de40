package goniograph.exchange;

import goniograph.finding.Finding;
import goniograph.source.Span;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Findings as text for people, by entry under its heading: one block each, its first line {@code
 * level file:line:column rule}, and a last line that counts them and names today.
 */
public final class FindingsText {
  private FindingsText() {}

  /** The whole report; every line ends with a line feed. */
  public static String of(FindingsReport report) {
    return report.byEntry().entrySet().stream()
            .map(group -> of(group.getKey(), group.getValue()))
            .collect(Collectors.joining())
        + report.summary()
        + "\n";
  }

  private static String of(String entry, List<Finding> findings) {
    String heading = entry.isEmpty() ? FindingsReport.SHARED : entry;
    return "== "
        + heading
        + " ==\n\n"
        + findings.stream().map(FindingsText::of).collect(Collectors.joining());
  }

  /** One finding, with an empty line behind it. */
  public static String of(Finding finding) {
    return head(finding)
        + line("", finding.what())
        + line("why: ", finding.why())
        + line("because: ", finding.because())
        + line("mend: ", finding.mend())
        + line("source: ", finding.source())
        + "\n";
  }

  private static String head(Finding finding) {
    Span at = finding.at();
    return String.join(
            ":", finding.level().word() + " " + at.file(), at.line() + "", at.column() + "")
        + " "
        + finding.rule()
        + "\n";
  }

  private static String line(String label, String text) {
    return text.isEmpty() ? "" : "  " + label + text.strip() + "\n";
  }
}
