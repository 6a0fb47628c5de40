package goniograph.exchange;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.source.Span;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Findings as text for people: one block each, its first line {@code level file:line:column rule},
 * and a last line that counts them and names today.
 */
public final class FindingsText {
  private FindingsText() {}

  /** The whole report; every line ends with a line feed. */
  public static String of(FindingsReport report) {
    return report.findings().stream().map(FindingsText::of).collect(Collectors.joining())
        + summary(report)
        + "\n";
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

  private static String summary(FindingsReport report) {
    String counts =
        Arrays.stream(Level.values())
            .map(level -> counted(report.count(level), level.word()))
            .collect(Collectors.joining(", "));
    String entries = report.entries() == 1 ? "1 entry" : report.entries() + " entries";
    return counts + " in " + entries + " as of " + report.today() + ".";
  }

  private static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
