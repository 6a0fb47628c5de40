package goniograph.register;

import goniograph.finding.Finding;
import goniograph.source.Digest;
import java.time.LocalDate;

/**
 * Someone lets a warning stand for a while.
 *
 * @param rule the rule that warns
 * @param language the language version it warns about, or "" for all
 * @param finding digest of what it says, so that it speaks again as soon as it says something else
 * @param reason why it may stand
 * @param role in which capacity
 * @param by role id, never a name
 * @param on the day it was accepted
 * @param until the last day on which it stands
 */
public record AcceptedFinding(
    String rule,
    String language,
    String finding,
    String reason,
    Role role,
    String by,
    LocalDate on,
    LocalDate until) {

  /** What of a finding is accepted: its rule, its language and its words, wherever they stand. */
  public static String digest(Finding finding) {
    return Digest.of(
        String.join("\n", finding.rule(), finding.language(), finding.what(), finding.because()));
  }

  /** Whether this is about the finding, word for word. */
  public boolean about(Finding it) {
    return rule.equals(it.rule()) && language.equals(it.language()) && finding.equals(digest(it));
  }
}
