package goniograph.check;

import goniograph.finding.Finding;
import goniograph.source.Span;
import java.util.stream.Stream;

/**
 * One thing that is checked. A rule keeps nothing between calls, and gives one finding for a place
 * that lists all that is wrong there.
 */
public interface Rule {
  /** What it documents. */
  RulePage page();

  /** What it finds, in any order. */
  Stream<Finding> check(Checked checked);

  /** An error of this rule; why it matters and the source stand on its page. */
  default Finding error(Span at, String what, String mend) {
    return cited(Finding.error(page().name(), at, what, page().why(), mend));
  }

  /** A warning, as {@link #error}. */
  default Finding warning(Span at, String what, String mend) {
    return cited(Finding.warning(page().name(), at, what, page().why(), mend));
  }

  /** A note, as {@link #error}. */
  default Finding note(Span at, String what, String mend) {
    return cited(Finding.note(page().name(), at, what, page().why(), mend));
  }

  private Finding cited(Finding finding) {
    return page().source().equals(RulePage.HOUSE) ? finding : finding.withSource(page().source());
  }
}
