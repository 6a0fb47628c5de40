package goniograph.exchange;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import java.time.LocalDate;
import java.util.List;

/**
 * What one run of {@code check} has to say.
 *
 * @param today the day that counted as today
 * @param library the library folder as it was named
 * @param entries how many entries were looked at
 * @param findings what was found, in report order
 */
public record FindingsReport(LocalDate today, String library, int entries, List<Finding> findings) {
  /** Name of this program in reports. */
  public static final String TOOL = "goniograph";

  public FindingsReport {
    findings = findings.stream().sorted(Finding.ORDER).toList();
  }

  /** How many findings are of this level. */
  public long count(Level level) {
    return findings.stream().filter(finding -> finding.level() == level).count();
  }
}
