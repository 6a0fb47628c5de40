package goniograph.build;

import goniograph.check.Approvals;
import goniograph.check.Checked;
import goniograph.check.Checker;
import goniograph.check.rules.RuleBook;
import goniograph.finding.Finding;
import goniograph.finding.Level;
import goniograph.library.Library;
import goniograph.source.Files;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A library, read and judged: by the rules, and by what was signed.
 *
 * @param checked the library and what rules look at
 * @param findings everything found, in report order
 */
public record Examined(Checked checked, List<Finding> findings) {
  public Examined {
    findings = List.copyOf(findings);
  }

  /** Reads and judges the library in a folder. */
  public static Examined of(Files files, LocalDate today) {
    Checked checked = Checked.of(files, today);
    return new Examined(checked, new Checker(RuleBook.rules()).check(checked));
  }

  /** How every sheet stands. */
  public Approvals approvals() {
    return checked.approvals();
  }

  public Library library() {
    return checked.library();
  }

  /** Ids of entries that have an error of their own. */
  public Set<String> faulty() {
    Set<String> faulty = new TreeSet<>();
    findings.stream()
        .filter(finding -> finding.level() == Level.ERROR)
        .map(Finding::entry)
        .filter(id -> !id.isEmpty())
        .forEach(faulty::add);
    return faulty;
  }

  /** Errors of what all sheets share: where there are any, nothing is printed. */
  public List<Finding> sharedErrors() {
    return shared().filter(finding -> !ofOtherLanguage(finding)).toList();
  }

  /** Languages whose shared words have an error: their sheets are not printed, others are. */
  public Set<String> faultyLanguages() {
    return shared()
        .filter(Examined::ofOtherLanguage)
        .map(Finding::language)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private Stream<Finding> shared() {
    return findings.stream()
        .filter(finding -> finding.level() == Level.ERROR && finding.entry().isEmpty());
  }

  private static boolean ofOtherLanguage(Finding finding) {
    return !finding.language().isEmpty() && !finding.language().equals(Library.SOURCE_LANGUAGE);
  }
}
