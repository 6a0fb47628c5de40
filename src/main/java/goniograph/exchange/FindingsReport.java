package goniograph.exchange;

import goniograph.finding.Finding;
import goniograph.finding.Level;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

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

  private static final Pattern POSE = Pattern.compile("figures/([^/]+)\\.yaml");

  /** Heading of what concerns no entry alone. */
  static final String SHARED = "What all sheets share";

  public FindingsReport {
    findings = findings.stream().sorted(Finding.ORDER).toList();
  }

  /**
   * The findings by what they concern: the id of an entry or of a pose, in report order; those of
   * neither, under "", last.
   */
  public Map<String, List<Finding>> byEntry() {
    Map<String, List<Finding>> groups = new LinkedHashMap<>();
    findings.stream()
        .sorted(Comparator.comparing(finding -> concerned(finding).isEmpty()))
        .forEach(
            finding ->
                groups.computeIfAbsent(concerned(finding), id -> new ArrayList<>()).add(finding));
    return groups;
  }

  private static String concerned(Finding finding) {
    Matcher pose = POSE.matcher(finding.at().file());
    return finding.entry().isEmpty() && pose.matches() ? pose.group(1) : finding.entry();
  }

  /** How much was found, where and for which day, in one sentence. */
  String summary() {
    String counts =
        Arrays.stream(Level.values())
            .map(level -> counted(count(level), level.word()))
            .collect(Collectors.joining(", "));
    return counts
        + " in "
        + (entries == 1 ? "1 entry" : entries + " entries")
        + " as of "
        + today
        + ".";
  }

  /** {@code 1 error}, {@code 2 errors}. */
  static String counted(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  /** How many findings are of this level. */
  public long count(Level level) {
    return findings.stream().filter(finding -> finding.level() == level).count();
  }
}
